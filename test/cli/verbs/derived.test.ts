// Long because rounds, derived numbers and error rates need no lab and share one folder.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { run } from '../../../src/cli/run.ts'
import { capturedDesk } from '../capturedDesk.ts'

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-derived-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

async function kufe(...words: string[]) {
  const desk = capturedDesk({}, { KUFE_HOME: join(folder, 'home') })
  const code = await run(words, desk)
  return { code, out: desk.out(), err: desk.err() }
}

async function good(...words: string[]) {
  const answer = await kufe(...words)
  if (answer.code !== 0) throw new Error(answer.err)
  return answer
}

describe('round', () => {
  test('precision, who stands out, and the picture of the page', async () => {
    const svg = join(folder, 'round.svg')
    const { code, out } = await kufe('round', 'examples/round/round.csv', '--svg', svg)
    expect(code).toBe(0)
    expect(out).toContain('Round of 8 laboratories, 3 results each')
    expect(out).toContain('forest: h beyond its critical value at all speeds')
    expect(out).toContain('harbour: k beyond its critical value at 100 mm/s and 300 mm/s')
    // A regression snapshot.
    expect(readFileSync('docs/pictures/round.svg', 'utf8')).toBe(readFileSync(svg, 'utf8'))
  })

  test('a laboratory is taken out by a person with a reason, and the answer says so', async () => {
    const { out } = await kufe('round', 'examples/round/round.csv', '--without', 'forest=another batch', '--json')
    expect(JSON.parse(out)).toMatchObject({ without: [{ laboratory: 'forest', why: 'another batch' }] })
    expect(JSON.parse(out).laboratories).toHaveLength(7)
    expect((await kufe('round', 'examples/round/round.csv', '--without', 'forest')).err).toContain('for a reason')
    expect((await kufe('round', 'examples/round/round.csv', '--without', 'wood=x')).err).toContain(
      'No laboratory is called so',
    )
  })

  test('results of the program, one for each curve', async () => {
    const files: string[] = []
    for (const name of ['a-1', 'a-2', 'b-1', 'b-2']) {
      const record = `examples/lacquer/lacquer-${name}`
      const { out } = await kufe('reduce', `${record}.csv`, '-s', `${record}.setup.yaml`, '--json')
      const file = join(folder, `${name}.json`)
      writeFileSync(file, out)
      files.push(`${name.slice(0, 1)}=${file}`)
    }
    const { code, out } = await kufe('round', ...files, '--at', '10 mm/s', '--json')
    expect(code).toBe(0)
    expect(JSON.parse(out)).toMatchObject({
      laboratories: ['a', 'b'],
      replicates: [2, 2],
      speeds: [{ slidingSpeed: 0.01 }],
    })
  })

  test.for([
    { text: 'lab,replicate,speed (mm/s),friction\na,1,1,0.2\n', says: 'no column laboratory' },
    { text: 'laboratory;replicate;speed;friction\na;1;1;0.2\n', says: 'has no unit' },
    { text: 'laboratory,replicate,speed (mm/s),friction\na,1,1,x\na,2,1,-1\n', says: 'must be above zero' },
    { text: 'laboratory,replicate,speed (mm/s),friction\na,1,1,0.2\nb,1,1,0.3\n', says: 'one with two results' },
    { text: 'laboratory,replicate,speed (mm/s),friction\na,1,1,0.2\na,2,9,0.3\n', says: 'no speed in common' },
    { text: '', says: 'empty' },
  ])('a table that cannot be used: $says', async ({ text, says }) => {
    const file = join(folder, 'bad.csv')
    writeFileSync(file, text)
    const { code, err } = await kufe('round', file)
    expect(code).toBe(3)
    expect(err).toContain(says)
  })
})

describe('uncertainty', () => {
  const model = (text: string): string => {
    const file = join(folder, 'model.yaml')
    writeFileSync(file, text)
    return file
  }

  test('the wear rate of the page, its words and its picture', async () => {
    const svg = join(folder, 'wear.svg')
    const { code, out } = await kufe('uncertainty', 'examples/round/wear.yaml', '--svg', svg)
    expect(code).toBe(0)
    expect(out.replace(/\s+/g, ' ')).toContain('The law of propagation does not hold here')
    expect(out).toContain('mm³/(N·m)')
    // A regression snapshot.
    expect(readFileSync('docs/pictures/uncertainty.svg', 'utf8')).toBe(readFileSync(join(folder, 'wear-2.svg'), 'utf8'))
  })

  test('the resistance of JCGM 100:2008, H.2, with its correlations', async () => {
    const file = model(`
quantities:
  V: { value: 4.9990, standardUncertainty: 0.0032 }
  I: { value: 0.019661, standardUncertainty: 0.0000095 }
  phi: { value: 1.04446, standardUncertainty: 0.00075 }
correlations:
  - { between: V, and: I, coefficient: -0.36 }
  - { between: V, and: phi, coefficient: 0.86 }
  - { between: I, and: phi, coefficient: -0.65 }
results:
  R: V/I*cos(phi)
  X: V/I*sin(phi)
`)
    const { out } = await kufe('uncertainty', file, '--json')
    const { results, correlations } = JSON.parse(out)
    expect(Math.abs(results[0].linear.estimate - 127.732)).toBeLessThan(0.02)
    expect(Math.abs(results[0].linear.standardUncertainty - 0.071)).toBeLessThan(0.002)
    expect(Math.abs(results[1].linear.standardUncertainty - 0.295)).toBeLessThan(0.002)
    expect(Math.abs(correlations[1] + 0.588)).toBeLessThan(0.01)
    expect(Math.abs(results[0].monteCarlo.standardUncertainty - 0.071)).toBeLessThan(0.002)
    expect(results[0].comparison.agree).toBe(true)
  })

  test('what two speeds of one record share cancels from their ratio', async () => {
    const record = 'examples/lacquer/lacquer-a-1'
    const reduced = await good('reduce', `${record}.csv`, '-s', `${record}.setup.yaml`, '--json')
    writeFileSync(join(folder, 'curve.json'), reduced.out)
    const quantity = (at: string): string => `{ result: curve.json, frictionAt: ${at} }`
    const file = model(
      `quantities:\n  slow: ${quantity('1 mm/s')}\n  fast: ${quantity('100 mm/s')}\nresults:\n  ratio: slow/fast\n  slowAlone: slow*1\n`,
    )
    const { results } = JSON.parse((await kufe('uncertainty', file, '--json')).out)
    const share = (i: number): number => results[i].linear.standardUncertainty / results[i].linear.estimate
    expect(share(0)).toBeLessThan(0.2 * share(1))
  })

  test('all mistakes at once, each with its place and its mend', async () => {
    const file = model(`
quantities:
  M: { value: 1.5 mN·m, standardUncertainty: 2 N }
  F: { value: 5 newtons-ish }
  2x: { value: 1 }
  r: { value: 15 mm, plusMinus: 1 %, shape: round }
  Q: { standardUncertainty: 1 N }
  e: { value: 1 N, expandedUncertainty: 0.1 N }
results:
  mu: M/(F*r
`)
    const { code, err } = await kufe('uncertainty', file)
    expect(code).toBe(3)
    for (const part of [
      'model.yaml:3',
      'The unit "newtons-ish" is not known',
      'can be no name',
      'no shape "round"',
      'Q has no value',
      'needs its coverage factor',
    ]) {
      expect(err).toContain(part)
    }
  })

  test.for([
    { formula: 'M/(r*F', says: 'never closed' },
    { formula: 'M + F', says: 'It adds' },
    { formula: 'process.exit(1)', says: '"." means nothing' },
    { formula: 'M/(r*F-r*F)', says: 'no finite number' },
    { formula: '{ formula: "M/r", unit: mm }', says: 'comes out in' },
  ])('a formula that cannot be computed: $formula', async ({ formula, says }) => {
    const text = `quantities:\n  M: { value: 1.5 mN·m, standardUncertainty: 1 % }\n  F: { value: 5 N }\n  r: { value: 15 mm }\nresults:\n  mu: ${formula.startsWith('{') ? formula : JSON.stringify(formula)}\n`
    const { code, err } = await kufe('uncertainty', model(text))
    expect(code).toBe(3)
    expect(err).toContain(says)
  })
})

test('verdict-rates: rules keep their promise, and the tables are the same again', async () => {
  const words = ['verdict-rates', '--draws', '400', '--seed', '3', '--json']
  const first = await kufe(...words)
  expect(first.code).toBe(0)
  const { limits, watches, scatter } = JSON.parse(first.out)
  expect(limits).toHaveLength(21)
  expect(watches.length).toBeGreaterThan(20)
  expect(scatter).toHaveLength(15)
}, 60_000)
