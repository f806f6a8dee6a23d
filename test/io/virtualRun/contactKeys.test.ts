import { expect, test } from 'vitest'
import { readVirtualRun, virtualRunTemplate } from '../../../src/io/index.ts'

/** The template with other disturbances and what the rig is said to be. */
function runWith(disturbances: string, rig = ''): ReturnType<typeof readVirtualRun> {
  const text = virtualRunTemplate
    .replace(/^disturbances:\n[\s\S]*?\n\n/m, `disturbances:\n${disturbances}\n\n`)
    .replace(/^rig:\n/m, `rig:\n${rig}`)
  return readVirtualRun(text, 'trial.run.yaml')
}

const shaft = '  torsionalStiffness: 20 N·m/rad\n  inertia: 50 µN·m·s²\n'

test('every disturbance of the contact is read as it is written', () => {
  const read = runWith(
    '  springStickSlip:\n    staticExcess: 20 %\n    dampingRatio: 3 %\n    scatter: 8 %\n  hunting:\n    frequency: 3 Hz\n    speedShare: 2 %\n    torque: 0.5 mN·m\n' +
      '  archardWear:\n    specificRate: 2e-5 mm³/(N·m)\n  wornSpot:\n    angle: 60°\n    width: 20°\n    excess: -15 %\n    from: 2 m\n    to: 5 m',
    shaft,
  )
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const { stickSlip, hunting, wear, wornSpot } = read.value.run.disturbances
  expect(stickSlip).toEqual({ kind: 'spring', staticExcess: 0.2, dampingRatio: 0.03, scatter: 0.08 })
  expect(hunting).toEqual({ frequency: 3, speedShare: 0.02, torque: 5e-4 })
  expect(wear?.kind).toBe('archard')
  expect(wornSpot?.excess).toBe(-0.15)
  expect(wornSpot?.angle).toBeCloseTo(Math.PI / 3, 12)
})

test.for([
  {
    name: 'a shaft without stiffness and inertia',
    text: '  springStickSlip:\n    staticExcess: 20 %\n    dampingRatio: 3 %',
    kinds: ['keyMissing', 'keyMissing'],
  },
  {
    name: 'two laws of wear',
    text: '  wear:\n    depthPerMetre: 2 µm\n  archardWear:\n    specificRate: 2e-5 mm³/(N·m)',
    kinds: ['keysExcludeEachOther'],
  },
  {
    name: 'a spot that ends before it begins',
    text: '  wornSpot:\n    angle: 60°\n    width: 20°\n    excess: 15 %\n    from: 5 m\n    to: 2 m',
    kinds: ['valuesDisagree'],
  },
])('refused with a place and a mend: $name', ({ text, kinds }) => {
  const read = runWith(text)
  expect(read.ok ? [] : read.problems.map(({ kind }) => kind)).toEqual(kinds)
  for (const { place, mend } of read.ok ? [] : read.problems) {
    expect(place.line).toBeGreaterThan(1)
    expect(mend).toMatch(/\w/)
  }
})
