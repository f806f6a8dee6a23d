import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { type Compared, type CompareWords, compareFiles, comparisonText } from '../../../src/bench/compare/index.ts'

const folder = 'test/data/records'
const outside = { now: () => new Date(0), progress: () => {}, stop: { aborted: false }, program: 'kufe 0.0.0-test' }
const reading = { units: [], columns: [], mappings: 'nowhere' }

async function compared(words: readonly string[], ask: CompareWords = {}): Promise<Compared> {
  const setup = `${folder}/varnish.setup.yaml`
  const outcome = await compareFiles({ words, setup, reading, options: {}, ask: { draws: 2000, ...ask } }, outside)
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

const problems = async (words: readonly string[], ask: CompareWords = {}): Promise<string[]> => {
  const setup = `${folder}/varnish.setup.yaml`
  const outcome = await compareFiles({ words, setup, reading, options: {}, ask }, outside)
  return outcome.ok ? [] : outcome.problems.map(({ kind }) => kind)
}

const both = [`A=${folder}/varnish-a-*.csv`, `B=${folder}/varnish-b-*.csv`]

interface TrueStep {
  readonly v: number
  readonly mu: number
}

/** Mean of ln µ of the true curves of one lacquer at their steps (what the program that made the records put in). */
function trueLevels(letter: string): number[] {
  const truths = [1, 2, 3, 4, 5].map(
    (n) => JSON.parse(readFileSync(`${folder}/varnish-${letter}-${n}.truth.json`, 'utf8')).steps as TrueStep[],
  )
  return truths[0].map((_, i) => truths.reduce((sum, steps) => sum + Math.log(steps[i].mu), 0) / truths.length)
}

test('two lacquers: the true difference lies inside the band at every speed, and the verdict is right', async () => {
  const { comparison } = await compared(both)
  const [difference] = comparison.differences
  const [a, b] = [trueLevels('a'), trueLevels('b')]
  const steps = a.map((_, i) => 5e-4 * 400 ** (i / 10))
  const truth = (speed: number): number => {
    const i = Math.min(
      9,
      steps.findLastIndex((step) => step <= speed * 1.0001),
    )
    const share = Math.log(speed / steps[i]) / Math.log(steps[i + 1] / steps[i])
    return Math.expm1((1 - share) * (b[i] - a[i]) + share * (b[i + 1] - a[i + 1]))
  }
  for (const [i, speed] of comparison.speeds.entries()) {
    expect(difference.low[i]).toBeLessThan(truth(speed))
    expect(difference.high[i]).toBeGreaterThan(truth(speed))
    // The mean of the records' own truths is met far better than the band says: reducing costs next to nothing.
    expect(Math.abs(difference.value[i] - truth(speed))).toBeLessThan(0.004)
  }
  expect(difference.stretches.every(({ verdict }) => verdict === 'lower')).toBe(true)
  expect(comparison.sentences[0]).toMatch(
    /^B slips more easily than A over the whole range, from 0\.5 to 200 mm\/s, by/,
  )
  expect(comparison.samples.flatMap(({ replicates }) => replicates.flatMap(({ flags }) => flags))).toEqual([])
})

test('the same files and seed give the same bytes; another seed moves the band a little', async () => {
  const [first, again, other] = [await compared(both), await compared(both), await compared(both, { seed: 2 })]
  expect(comparisonText(first)).toBe(comparisonText(again))
  expect(other.comparison.differences[0].factor).not.toBe(first.comparison.differences[0].factor)
  expect(other.comparison.differences[0].factor / first.comparison.differences[0].factor).toBeCloseTo(1, 1)
})

test('docs/comparison.md names every field of the document', async () => {
  const page = readFileSync('docs/comparison.md', 'utf8')
  const document: unknown = JSON.parse(comparisonText(await compared(both)))
  const names = new Set<string>()
  const gather = (value: unknown): void => {
    if (Array.isArray(value)) value.slice(0, 2).forEach(gather)
    else if (typeof value === 'object' && value !== null) {
      for (const [name, inner] of Object.entries(value)) {
        names.add(name)
        gather(inner)
      }
    }
  }
  gather(document)
  expect(names.size).toBeGreaterThan(40)
  expect([...names].filter((name) => !page.includes(`\`${name}\``))).toEqual([])
})

test('one sample, a margin, speeds and a replicate taken out', async () => {
  const words = [`A=${folder}/varnish-a-*.csv`]
  const one = await compared(words, { without: ['varnish-a-2.csv=the plate was not clean'], by: 'MK' })
  expect(one.comparison.samples[0].used).toBe(4)
  expect(one.comparison.differences).toEqual([])
  expect(one.removals).toEqual([{ record: 'varnish-a-2.csv', by: 'MK', why: 'the plate was not clean' }])
  const asked = await compared(both, { margin: '25 %', at: ['2 mm/s', '0.05 m/s'], rankAt: '20 mm/s' })
  expect(asked.comparison.margin).toBe(0.25)
  expect(asked.comparison.differences[0].named.map(({ slidingSpeed }) => slidingSpeed)).toEqual([0.002, 0.05])
  expect(asked.comparison.ranking?.by).toBe('friction at 20 mm/s')
  expect(asked.comparison.sentences[0]).toMatch(/less than the 25 % that matter/)
})

test('bad input: all problems of all words at once', async () => {
  expect(await problems(both, { margin: '-3 %', at: ['fast'], without: ['varnish-a-1.csv'], by: 'MK' })).toEqual([
    'marginUnusable',
    'speedUnusable',
    'removalUnsigned',
  ])
  expect(await problems(['A=nowhere/*.csv', 'B=nothing.csv'])).toEqual(['noRecordFound', 'fileMissing'])
  expect(await problems([`${folder}/varnish-a-1.csv`])).toEqual(['sampleUnknown'])
  expect(await problems([`A=${folder}/varnish-a-1.csv`, `B=${folder}/varnish-a-1.csv`])).toEqual(['recordTwice'])
  expect(await problems(both, { at: ['2 m/s'] })).toEqual(['speedOutside'])
})

test('samples at another load are compared with a caution that names both', async () => {
  const lacquer = 'examples/lacquer'
  const words = [`A=${lacquer}/lacquer-a-[1-3].csv`, `spray=${lacquer}/silicone-spray.csv`]
  const outcome = await compareFiles({ words, setup: undefined, reading, options: {}, ask: { draws: 400 } }, outside)
  if (!outcome.ok) throw new Error('the examples can be compared')
  const [caution] = outcome.value.cautions
  expect(caution.samples).toEqual(['A', 'spray'])
  expect(caution.sentence).toMatch(/^spray (against|and) A.*load/)
  expect((await compared(both)).cautions).toEqual([])
})
