import { describe, expect, test } from 'vitest'
import { simulateRecord } from '../../../src/core/rig/index.ts'
import type { Problem } from '../../../src/core/terms/index.ts'
import type { Key } from '../../../src/io/setup/keyKinds.ts'
import { inventedLine, readVirtualRun, virtualRunTemplate } from '../../../src/io/virtualRun/index.ts'
import { virtualRunKeys } from '../../../src/io/virtualRun/virtualRunKeys.ts'

function read(text: string) {
  const outcome = readVirtualRun(text, 'run.yaml')
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems, null, 1))
  return outcome.value
}

function problems(text: string): readonly Problem[] {
  const outcome = readVirtualRun(text, 'run.yaml')
  return outcome.ok ? [] : outcome.problems
}

/** The template with one line put in place of another. */
function changed(from: string | RegExp, to: string): string {
  const text = virtualRunTemplate.replace(from, to)
  if (text === virtualRunTemplate) throw new Error(`the template has no ${from}`)
  return text
}

const lineOf = (text: string, part: string): number => text.split('\n').findIndex((line) => line.includes(part)) + 1

describe('template', () => {
  test('reads, and makes a record', () => {
    const { run, setup, dialect, seed } = read(virtualRunTemplate)
    expect(seed).toBe(1)
    expect(run.rig.torqueCeiling).toBeCloseTo(0.2, 15)
    expect(run.rig.noise.torque).toEqual({ white: 0, correlated: 4e-6, correlation: 0.6, resolution: 0 })
    expect(run.friction.at(0.008)).toBeCloseTo((0.22 + 0.09 * 0.008 ** 0.35) / 2, 12)
    expect(setup.run.axialForce).toBe(5)
    expect(dialect.preamble).toEqual([inventedLine])
    expect(simulateRecord(run, seed).channels.rows).toBe(1100)
  })

  test('still reads when everything that is switched off is switched on', () => {
    const on = virtualRunTemplate.replace(/^(\s*)#(?=[a-z]\w*:)/gim, '$1').replace('  turns: 1\n', '')
    const { run } = read(on)
    expect(Object.values(run.disturbances).every((effect) => effect !== undefined)).toBe(true)
    expect(run.rig.torsionalStiffness).toBe(100)
  })

  test('names every key of the table that a virtual run adds', () => {
    const names: string[] = []
    const walk = (key: Key, name: string): void => {
      names.push(name)
      if (key.is === 'section') for (const [inner, below] of Object.entries(key.keys)) walk(below, inner)
      if (key.is === 'variants') for (const variant of Object.values(key.variants)) walk(variant, '')
    }
    for (const own of ['speeds', 'sheet', 'friction', 'noise', 'signal', 'disturbances', 'table']) {
      walk(virtualRunKeys.keys[own], own)
    }
    expect(names.filter((name) => !virtualRunTemplate.includes(name))).toEqual([])
  })
})

test('blanks before, after or both; zeroes and drifts in SI', () => {
  const blanks = ['none', 'before', 'after', 'before and after'].map((blank) => {
    const { sheet } = read(virtualRunTemplate.replace('blank: none', `blank: ${blank}`)).run
    return [sheet.blankBefore, sheet.blankAfter]
  })
  expect(blanks).toEqual([
    [false, false],
    [true, false],
    [false, true],
    [true, true],
  ])
  const signal =
    '  riseTime: 0.25 s\n  residualTorque: 3 µN·m\n  dragAtOneRadianPerSecond: 0.4 µN·m\n  forceZero: -20 mN\n'
  const { rig } = read(changed('  riseTime: 0.25 s\n', `${signal}  forceDriftPerHour: 36 mN\n`)).run
  expect(rig.riseTime).toBe(0.25)
  expect(rig.residualTorque?.level).toBeCloseTo(3e-6, 18)
  expect(rig.residualTorque?.perSpeed).toBeCloseTo(4e-7, 18)
  expect(rig.forceZero?.level).toBe(-0.02)
  expect(rig.forceZero?.perSecond).toBeCloseTo(1e-5, 15)
})

describe('other ways to say it', () => {
  test('a list of speeds, backwards too', () => {
    const { run } = read(changed(/ {2}kind: range\n(?:.*\n){5}/, '  kind: list\n  speeds: 1 mm/s; -20 mm/s; 0.1 m/s\n'))
    expect(run.sheet.speeds).toEqual({ kind: 'list', speeds: [1e-3, -0.02, 0.1] })
  })

  test('a ramp needs no dwell', () => {
    const text = changed(
      / {2}kind: range\n(?:.*\n){5}/,
      '  kind: ramp\n  slowest: 1 mm/s\n  fastest: 0.1 m/s\n  duration: 60 s\n',
    )
    const { run } = read(text.replace('  dwell: 10 s\n', ''))
    expect(run.sheet.speeds).toMatchObject({ kind: 'ramp', duration: 60, law: 'logarithmic', direction: 'up' })
  })

  test.for([
    ['kind: plateau\n  boundary: 0.2', 0.2],
    ['kind: power law\n  film: 0.1\n  filmExponent: 0.5', 0.1],
    [
      'kind: Stribeck, sloped\n  boundary: 0.3\n  boundaryExponent: 0.1\n  film: 0.1\n  filmExponent: 0.5\n  transition: 1 m/s\n  sharpness: 1',
      0.2,
    ],
    ['kind: Stribeck, exponential\n  boundary: 0.3\n  plateau: 0.1\n  viscous: 0.2\n  transition: 1 mm/s', 0.3],
  ] as const)('%s', ([law, atOne]) => {
    const { run } = read(changed(/ {2}kind: Stribeck\n(?:.*\n){5}/, `  ${law}\n`))
    expect(run.friction.at(1)).toBeCloseTo(atOne, 12)
  })

  test('tables of other dialects', () => {
    const text = changed('separator: comma', 'separator: tab').replace('encoding: UTF-8', 'encoding: UTF-16LE')
    const { dialect, run } = read(text.replace('stepColumn: yes', 'stepColumn: no').replace('label: yes', 'label: no'))
    expect(dialect).toMatchObject({ separator: '\t', encoding: 'utf-16le', preamble: [] })
    expect(run.columns).not.toContain('step')
  })
})

describe('what is wrong is said with its line and its mend', () => {
  test.for([
    ['slowest: 0.5 mm/s', 'slowest: 0.5 m/s', 'speeds.slowest', /larger/],
    ['slowest: 0.5 mm/s', 'slowest: 0.5', 'speeds.slowest', /unit/],
    ['perDecade: 4', 'perDecades: 4', 'speeds.perDecades', /no key/],
    ['fastest: 200 mm/s', 'fastest: 20 m/s', 'speeds.fastest', /rig reaches/],
    ['#turns: 1', 'turns: 1', 'sheet.turns', /both/],
    ['samplingRate: 10 Hz', 'samplingRate: 100 kHz\n  dwell2: 1 s', 'sheet.dwell2', /no key/],
    ['decimalMark: point', 'decimalMark: comma', 'table.decimalMark', /commas/],
    ['separator: comma', 'separator: colon', 'table.separator', /colon/],
    ['sharpness: 1.3', 'sharpness: -1.3', 'friction.sharpness', /outside/],
    ['correlation: 0.6', 'correlation: 1', 'noise.torque.correlation', /outside/],
  ] as const)('%s → %s', ([from, to, path, what]) => {
    const text = changed(from, to)
    const found = problems(text).find(({ place }) => place.name === path)
    expect(found?.what).toMatch(what)
    expect(found?.mend.length).toBeGreaterThan(5)
    expect(found?.place.line).toBe(lineOf(text, to.split('\n').at(-1) ?? to))
    expect(found?.class).toBe('badInput')
  })

  test('a missing dwell, a missing force', () => {
    expect(problems(changed('  dwell: 10 s\n', '')).map(({ place }) => place.name)).toEqual(['sheet.dwell'])
    expect(problems(changed('  axialForce: 5 N\n', '')).map(({ place }) => place.name)).toEqual(['run.axialForce'])
  })

  test('contact lost in a step that is none', () => {
    const lost = '  lostContact:\n    step: 70\n    from: 3 s\n    to: 9 s\n    share: 15 %\n'
    const [problem] = problems(changed('  gapRunOut:', `${lost}  gapRunOut:`))
    expect(problem.what).toContain('Step 70')
    expect(problem.mend).toContain('1 to 11')
  })

  test('more rows than anybody needs', () => {
    const [problem] = problems(changed('dwell: 10 s', 'dwell: 1e6 s').replace('10 Hz', '100 kHz'))
    expect(problem.what).toContain('rows')
  })

  test('every fault of a list of speeds', () => {
    const text = changed(/ {2}kind: range\n(?:.*\n){5}/, '  kind: list\n  speeds: 1 mm; 0 mm/s; 5 mm/s\n')
    expect(problems(text).map(({ place }) => place.name)).toEqual(['speeds.speeds', 'speeds.speeds'])
  })

  test('no YAML at all', () => {
    expect(problems('')).toHaveLength(1)
    expect(problems('- a\n- b')).toHaveLength(1)
    expect(problems('{')).not.toHaveLength(0)
  })
})
