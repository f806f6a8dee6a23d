import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { CoverageMark } from '../../../src/bench/coverRun.ts'
import { coverBreakaway } from '../../../src/bench/questions/coverBreakaway.ts'
import { coverLives, coverSeries } from '../../../src/bench/questions/coverSeries.ts'
import { run } from '../../../src/cli/run.ts'
import { capturedDesk } from '../../cli/capturedDesk.ts'

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-questions-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

const rigWords = `rig:
  name: virtual rig
  torque: { accuracy: 0.5 % }
  axialForce: { accuracy: 1 % }
  inertia: 60 µN·m·s²
  torsionalStiffness: 25 N·m/rad
fixture: { kind: balls on plate, balls: 3, ballDiameter: 6.35 mm, trackRadius: 15 mm }
pair: { upper: { name: steel ball }, lower: { name: invented wax } }
run: { axialForce: 5 N, temperature: 23 °C, sample: invented wax }
`

async function kufe(...words: string[]): Promise<{ code: number; out: string; err: string }> {
  const desk = capturedDesk()
  const code = await run(words, desk)
  return { code, out: desk.out(), err: desk.err() }
}

/** Makes a record from a virtual run; its path without an ending. */
async function made(name: string, own: string, ...options: string[]): Promise<string> {
  const file = join(folder, `${name}.run.yaml`)
  writeFileSync(file, rigWords + own)
  const { code, err } = await kufe('simulate', file, '--out', folder, '--force', ...options)
  if (code !== 0) throw new Error(err)
  return join(folder, name)
}

const starts = `breakaway:
  dwells: 1 s; 3 s; 10 s; 30 s; 30 s; 1 s
  mostTorque: 40 mN·m
  rampTime: 20 s
  samplingRate: 50 Hz
  level: 0.22
  growth: 0.012
  scatter: 0.001
  kinetic: 0.17
noise: { torque: { white: 8 µN·m }, axialForce: { white: 5 mN }, angle: { white: 2 µrad } }
`

describe('kufe breakaway', () => {
  test('finds the static friction that the truth file names, and says why', async () => {
    const stem = await made('starts', starts)
    const truth = JSON.parse(readFileSync(`${stem}.truth.json`, 'utf8'))
    const answer = await kufe('breakaway', `${stem}.csv`, '--setup', `${stem}.setup.yaml`, '--json')
    const document = JSON.parse(answer.out)
    expect(answer.code).toBe(0)
    expect(document.schemaVersion).toBe('1')
    expect(document.starts).toHaveLength(6)
    for (const [i, { staticFriction }] of document.starts.entries()) {
      expect(Math.abs(staticFriction.value / truth.starts[i].staticFriction - 1)).toBeLessThan(3e-3)
    }
    const words = await kufe('breakaway', `${stem}.csv`, '--setup', `${stem}.setup.yaml`, '--why')
    expect(words.out).toContain('Static friction grows with the time at rest')
    expect(words.out).toContain('The contact held until the angle ran away: this is static friction.')
  })

  test('a ramp that ends too early is a finding with --strict', async () => {
    const stem = await made('weak', starts.replace('40 mN·m', '12 mN·m'))
    const { code, out } = await kufe('breakaway', `${stem}.csv`, '--setup', `${stem}.setup.yaml`, '--strict')
    expect(code).toBe(1)
    expect(out).toContain('no breakaway')
    expect(out).toMatch(/over 0\.1(59|6)/)
  })

  test('a virtual run without inertia says what is missing', async () => {
    const file = join(folder, 'bad.run.yaml')
    writeFileSync(file, rigWords.replace(/ {2}inertia.*\n/, '') + starts.replace('1 s; 3 s', 'soon; 3 s'))
    const { code, err } = await kufe('simulate', file, '--out', folder)
    expect(code).toBe(3)
    expect(err).toContain('rig.inertia is missing')
    expect(err).toContain('soon')
  })
})

const hold = (seed: number, distance: number): string => `seed: ${seed}
speeds: { kind: list, speeds: 50 mm/s }
sheet: { dwell: 200 s, samplingRate: 10 Hz }
friction: { kind: plateau, boundary: 0.12 }
noise: { torque: { correlated: 40 µN·m, correlation: 0.6 }, axialForce: { white: 5 mN } }
disturbances: { coatingFailure: { distance: ${distance} m, width: 0.2 m, friction: 0.6 } }
`

describe('kufe hold', () => {
  test('three coatings, two of which fail, give a Weibull law with one life counted as longer', async () => {
    const stems = [await made('h1', hold(1, 4)), await made('h2', hold(2, 7)), await made('h3', hold(3, 50))]
    const svg = join(folder, 'h.svg')
    const files = stems.map((stem) => `${stem}.csv`)
    // No setup is named: the one beside each record is taken.
    const { code, out } = await kufe('hold', ...files, '--threshold', '0.36', '--svg', svg, '--json')
    expect(code).toBe(0)
    const { records, lives } = JSON.parse(out)
    expect(
      records.map(({ hold: one }: { hold: { life: { distance: unknown } } }) => one.life.distance !== null),
    ).toEqual([true, true, false])
    // Half way from 0.12 to 0.6.
    expect(records[0].hold.life.distance.value).toBeCloseTo(4.1, 1)
    expect([lives.failures, lives.censored]).toEqual([2, 1])
    expect(lives.weibull.shape.value).toBeGreaterThan(0)
    expect(readFileSync(svg, 'utf8')).toContain('<svg')
    const words = await kufe('hold', ...files, '--threshold', '0.36')
    expect(words.out).toContain('2 passed the threshold, 1 lasted')
  })

  test('an option that is no quantity is wrong use', async () => {
    const { code, err } = await kufe('hold', 'x.csv', '--margin', 'much')
    expect(code).toBe(2)
    expect(err).toContain('much')
  })
})

const sweep = (
  more: string,
): string => `speeds: { kind: range, slowest: 1 mm/s, fastest: 300 mm/s, perDecade: 3, direction: up and down }
sheet: { dwell: 12 s, samplingRate: 10 Hz }
friction: { kind: Stribeck, boundary: 0.22, film: 0.09, filmExponent: 0.35, transition: 8 mm/s, sharpness: 1.3 }
noise: { torque: { correlated: 6 µN·m, correlation: 0.6 }, axialForce: { white: 5 mN }, temperature: { white: 0.02 K } }
${more}`

describe('kufe loop and kufe run-in', () => {
  test('running-in is a real loop with its cause first, and not run in', async () => {
    const first = await made('s1', sweep('disturbances: { runningIn: { excess: 40 %, distance: 3 m } }\n'))
    const second = await made('s2', sweep('seed: 2\n'))
    const loop = await kufe('loop', `${first}.csv`, '--setup', `${first}.setup.yaml`, '--why', '--strict')
    expect(loop.code).toBe(1)
    expect(loop.out).toContain('1. running-in: likely')
    const document = JSON.parse((await kufe('loop', `${second}.csv`, '--setup', `${second}.setup.yaml`, '--json')).out)
    expect(document.verdict).toBe('none')
    const runIn = await kufe('run-in', `${first}.csv`, `${second}.csv`, '--strict')
    expect(runIn.code).toBe(1)
    expect(runIn.out).toContain('Is it run in? No.')
    const again = await made('s3', sweep('seed: 3\n'))
    const svg = join(folder, 'run-in.svg')
    const yes = await kufe('run-in', `${second}.csv`, `${again}.csv`, '--svg', svg)
    expect(yes.out).toContain('Is it run in? Yes.')
    expect(readFileSync(svg, 'utf8')).toContain('<svg')
  })
})

describe('kufe series', () => {
  const law = sweep(
    'conditions: { loadExponent: 0.33, activationEnergy: 20, referenceForce: 5 N, referenceTemperature: 23 °C }\n',
  )

  test('finds the exponent of four loads, and draws three pictures', async () => {
    const stems: string[] = []
    for (const force of ['1 N', '3 N', '10 N', '20 N']) {
      stems.push(
        await made(`load-${force[0]}${stems.length}`, law, '--axial-force', force, '--seed', `${stems.length + 1}`),
      )
    }
    const pictures = ['--svg', '--multiples', '--map'].flatMap((option) => [
      option,
      join(folder, `${option.slice(2)}.svg`),
    ])
    const { code, out, err } = await kufe('series', ...stems.map((stem) => `${stem}.csv`), ...pictures, '--json')
    expect([code, err]).toEqual([0, ''])
    const { overall, members } = JSON.parse(out)
    expect(members).toHaveLength(4)
    expect(overall.low).toBeLessThan(0.33)
    expect(overall.high).toBeGreaterThan(0.33)
    expect(overall.high - overall.low).toBeLessThan(0.02)
    for (const name of ['svg', 'multiples', 'map'])
      expect(readFileSync(join(folder, `${name}.svg`), 'utf8')).toContain('<svg')
  })

  test('finds the energy of three temperatures; an axis without viscosity is refused with its mend', async () => {
    const stems: string[] = []
    for (const degrees of ['23 °C', '40 °C', '60 °C']) {
      stems.push(await made(`warm-${stems.length}`, law, '--temperature', degrees))
    }
    const files = stems.map((stem) => `${stem}.csv`)
    const { out } = await kufe('series', ...files, '--against', 'temperature', '--json')
    expect(Math.abs(JSON.parse(out).overall.value / 20_000 - 1)).toBeLessThan(0.02)
    const refused = await kufe('series', ...files, '--against', 'temperature', '--axis', 'film')
    expect(refused.code).toBe(3)
    expect(refused.err).toContain('viscosity')
  })
})

// Few draws: a plain fault shows, a finer one needs `kufe coverage --of`.
test.for<[string, number, (seed: number, index: number) => CoverageMark[]]>([
  ['starts', 3, coverBreakaway],
  ['series', 60, coverSeries],
  ['lives', 40, coverLives],
])('intervals of %s hold the truth about as often as they say', ([, draws, cover]) => {
  const marks = Array.from({ length: draws }, (_, index) => cover(8, index)).flat()
  const given = marks.filter(({ inside }) => inside !== null)
  const share = given.filter(({ inside }) => inside).length / given.length
  expect(given.length).toBeGreaterThan(50)
  // Five binomial standard errors of 95 %.
  expect(Math.abs(share - 0.95)).toBeLessThan(5 * Math.sqrt((0.95 * 0.05) / given.length))
})
