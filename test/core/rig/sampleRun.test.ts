import { describe, expect, test } from 'vitest'
import { fixtureGeometry } from '../../../src/core/fixture/index.ts'
import { sampleRun, simulateRecord, speedSpans } from '../../../src/core/rig/index.ts'

const draws = Array.from({ length: 300 }, (_, index) => sampleRun(20_261_125, index))

const stepsOf = (draw: (typeof draws)[number]) => speedSpans(draw.run.sheet.speeds).map(([speed]) => speed)

test('the same seed and index give the same draw; others give others', () => {
  expect(JSON.stringify(sampleRun(1, 7))).toBe(JSON.stringify(sampleRun(1, 7)))
  expect(JSON.stringify(sampleRun(1, 7))).not.toBe(JSON.stringify(sampleRun(1, 8)))
  expect(JSON.stringify(sampleRun(1, 7))).not.toBe(JSON.stringify(sampleRun(2, 7)))
})

describe('what is drawn', () => {
  test('every fixture kind and every member of the family', () => {
    expect(new Set(draws.map(({ run }) => run.fixture.kind)).size).toBe(6)
    expect(new Set(draws.map(({ curve }) => curve.model)).size).toBe(5)
  })

  test('fixtures that can be, and setups that fit them', () => {
    for (const { run, setup } of draws) {
      expect(fixtureGeometry(run.fixture).lever).toBeGreaterThan(0)
      expect(setup.fixture).toEqual(run.fixture)
      expect(setup.run.axialForce).toBe(run.sheet.axialForce)
    }
  })

  test('8 to 24 steps of 60 to 600 samples', () => {
    for (const draw of draws) {
      const { sheet } = draw.run
      expect(stepsOf(draw).length).toBeGreaterThanOrEqual(8)
      expect(stepsOf(draw).length).toBeLessThanOrEqual(24)
      if (sheet.dwell.kind !== 'time') throw new Error('dwell must be a time')
      const samples = sheet.dwell.seconds * sheet.samplingRate
      expect(samples).toBeGreaterThan(59.9)
      expect(samples).toBeLessThan(600.1)
    }
  })

  test('in every run most steps turn at least once and the slowest does not', () => {
    for (const draw of draws) {
      const { sheet, fixture } = draw.run
      if (sheet.dwell.kind !== 'time') throw new Error('dwell must be a time')
      const { pathPerTurn } = fixtureGeometry(fixture)
      const { seconds } = sheet.dwell
      const turns = stepsOf(draw).map((speed) => (speed * seconds) / pathPerTurn)
      expect(Math.min(...turns)).toBeLessThan(1)
      expect(turns.filter((n) => n >= 1).length / turns.length).toBeGreaterThan(0.5)
    }
  })

  test('every step has time to settle', () => {
    for (const { run } of draws) {
      if (run.sheet.dwell.kind !== 'time') throw new Error('dwell must be a time')
      expect(run.sheet.dwell.seconds / run.rig.riseTime).toBeGreaterThan(24.9)
    }
  })

  test('memory of the noise from 0 to 0.9, ripple from 0 to 5 %', () => {
    const memories = draws.map(({ run }) => run.rig.noise.torque?.correlation ?? 0)
    const ripples = draws.map(({ run }) => run.disturbances.frictionRipple?.[0].amplitude ?? 0)
    expect(Math.min(...memories)).toBeLessThan(0.05)
    expect(Math.max(...memories)).toBeGreaterThan(0.85)
    expect(Math.max(...memories)).toBeLessThanOrEqual(0.9)
    expect(Math.min(...ripples)).toBeLessThan(0.003)
    expect(Math.max(...ripples)).toBeGreaterThan(0.047)
    expect(Math.max(...ripples)).toBeLessThanOrEqual(0.05)
  })

  test('most Stribeck curves have their minimum well inside the speeds', () => {
    const curves = draws.filter(({ curve }) => curve.model.startsWith('stribeck'))
    const inside = curves.filter((draw) => {
      const speeds = stepsOf(draw).sort((a, b) => a - b)
      const [slowest, fastest] = [speeds[0], speeds[speeds.length - 1]]
      const friction = Array.from({ length: 101 }, (_, i) =>
        draw.run.friction.at(slowest * (fastest / slowest) ** (i / 100)),
      )
      const lowest = friction.indexOf(Math.min(...friction))
      return lowest > 5 && lowest < 95
    })
    expect(inside.length / curves.length).toBeGreaterThan(0.8)
  })
})

test('friction is that of real pairs at both ends of the speeds', () => {
  for (const draw of draws) {
    const speeds = stepsOf(draw).sort((a, b) => a - b)
    const slow = draw.run.friction.at(speeds[0])
    expect(slow).toBeGreaterThan(0.015)
    expect(slow).toBeLessThan(1.5)
    if (draw.curve.model !== 'stribeckSloped') continue
    // The boundary level is drawn for the slowest speed, of 0.05 to 0.6, and has hardly begun to fall there.
    expect(slow).toBeGreaterThan(0.05 * 0.8)
    expect(slow).toBeLessThan(0.6001)
  }
})

test('every draw can be simulated', () => {
  for (const { run, seed } of draws.slice(0, 40)) {
    const { channels, truth } = simulateRecord(run, seed)
    expect(channels.rows).toBe(truth.rows)
    for (const name of channels.names) expect(channels.read(name, 0, truth.rows).every(Number.isFinite)).toBe(true)
  }
})
