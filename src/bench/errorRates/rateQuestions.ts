// Long because every question of the study stands here beside the others, with what it draws and what it promises.
import { type CompareOptions, compareSamples, type Replicate } from '../../core/decide/index.ts'
import type { Random } from '../../core/numeric/index.ts'
import { equivalencePower, powerOfTTest, smallestDifference } from '../../core/plan/index.ts'
import type { Comparison } from '../../core/terms/index.ts'
import { drawnSample, middleSpeed } from './drawnSample.ts'
import { type ScatterScene, scatterScenes, sceneScatter } from './scatterScenes.ts'

/** A question whose answer is right or wrong in each draw, and the share that was promised. */
export interface RateQuestion {
  /** Table in which it stands. */
  readonly table: 'band' | 'falseAlarm' | 'same' | 'power' | 'unlike' | 'scatter'
  readonly row: string
  readonly replicates: string
  /** Share of draws that should be counted, and the shares between which the promise is kept. */
  readonly promised: number
  readonly least: number
  readonly most: number
  /** One draw: true where it counts. */
  readonly ask: (random: Random, seed: number) => boolean
}

/** Draws behind one band. Few, as the chance of each band matters only on the average over thousands. */
const draws = 500

const replicateNumbers = [3, 5, 8] as const

/** Friction of the first sample; a constant law goes through any interpolation unchanged. */
const friction = 0.2

interface Pair {
  readonly scene: ScatterScene
  readonly counts: readonly [number, number]
  readonly ratio: number
  readonly widen?: number
}

function pairOf({ scene, counts, ratio, widen }: Pair, random: Random): Replicate[] {
  return [
    ...drawnSample({ sample: 'A', replicates: counts[0], friction, scene }, random),
    ...drawnSample({ sample: 'B', replicates: counts[1], friction: friction * ratio, scene, widen }, random),
  ]
}

function compared(all: readonly Replicate[], seed: number, options: Partial<CompareOptions> = {}): Comparison {
  const outcome = compareSamples(all, { options: { draws, seed, ...options }, at: [middleSpeed] })
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

const holdsTruth = ({ differences: [{ low, high }] }: Comparison, ratio: number): boolean =>
  low.every((end, i) => end <= ratio - 1 && ratio - 1 <= high[i])

const differs = ({ differences: [{ stretches }] }: Comparison): boolean =>
  stretches.some(({ verdict }) => verdict !== 'open')

/** The simultaneous band, at a true difference. */
const bandQuestions: readonly RateQuestion[] = scatterScenes.flatMap((scene) =>
  replicateNumbers.map((n): RateQuestion => {
    const pair = { scene, counts: [n, n], ratio: 0.88 } as const
    return {
      table: 'band',
      row: scene.words,
      replicates: String(n),
      promised: 0.95,
      ...{ least: 0.94, most: 0.96 },
      ask: (random, seed) => holdsTruth(compared(pairOf(pair, random), seed), pair.ratio),
    }
  }),
)

/** "Differs" somewhere, where nothing differs. */
const falseAlarmQuestions: readonly RateQuestion[] = scatterScenes.flatMap((scene) =>
  replicateNumbers.map(
    (n): RateQuestion => ({
      table: 'falseAlarm',
      row: scene.words,
      replicates: String(n),
      promised: 0.05,
      ...{ least: 0.04, most: 0.06 },
      ask: (random, seed) => differs(compared(pairOf({ scene, counts: [n, n], ratio: 1 }, random), seed)),
    }),
  ),
)

const [level] = scatterScenes
const margin = 0.1

/** "The same within 10 %", everywhere or on a stretch, where the difference is just that large. */
const sameQuestions: readonly RateQuestion[] = [level, scatterScenes[2], scatterScenes[5]].flatMap((scene) =>
  replicateNumbers.flatMap((n): RateQuestion[] => {
    // Small scatter makes the test as sharp as it gets, and so the false answer as likely as it gets.
    const pair = { scene: quieter(scene), counts: [n, n], ratio: 1 + margin } as const
    const most = { promised: 0.05, least: 0, most: 0.05 }
    const found = (random: Random, seed: number): Comparison['differences'][number] =>
      compared(pairOf(pair, random), seed, { margin }).differences[0]
    return [
      {
        ...{ table: 'same', row: `everywhere: ${scene.words}`, replicates: String(n), ...most },
        ask: (random, seed) => found(random, seed).same.everywhere,
      },
      {
        ...{ table: 'same', row: `on a stretch: ${scene.words}`, replicates: String(n), ...most },
        ask: (random, seed) => found(random, seed).stretches.some(({ within }) => within),
      },
    ]
  }),
)

/** A fifth of the scatter. */
function quieter(scene: ScatterScene): ScatterScene {
  return { ...scene, draw: (random, steps) => scene.draw(random, steps).map((value) => value / 5) }
}

/** What a plan promises, kept: seeing a difference of the size that it names, and showing two samples to be the same. */
const powerQuestions: readonly RateQuestion[] = replicateNumbers.flatMap((n) =>
  [0.8, 0.9].flatMap((power): RateQuestion[] => {
    const asked = { repeatability: sceneScatter, significance: 0.05 }
    const difference = smallestDifference(n, { ...asked, power })
    const promised = powerOfTTest(n, { ...asked, difference })
    const within = { promised, least: promised - 0.02, most: promised + 0.02 }
    const pair = { scene: level, counts: [n, n], ratio: Math.exp(difference) } as const
    const row = `difference of ${(100 * difference).toFixed(1)} %`
    return [
      {
        ...{ table: 'power', row: `${row} at a named speed`, replicates: String(n), ...within },
        ask: (random, seed) => compared(pairOf(pair, random), seed).differences[0].named[0].p <= 0.05,
      },
      {
        ...{ table: 'power', row: `${row} by the band`, replicates: String(n), ...within },
        ask: (random, seed) => differs(compared(pairOf(pair, random), seed)),
      },
    ]
  }),
)

/** Two equal samples shown to be the same within 10 %. */
const samePowerQuestions: readonly RateQuestion[] = [5, 8].map((n): RateQuestion => {
  const bound = Math.log1p(margin)
  const promised = equivalencePower({
    ...{ lowMargin: -bound, highMargin: bound, difference: 0, degreesOfFreedom: 2 * n - 2, significance: 0.05 },
    standardError: sceneScatter * Math.sqrt(2 / n),
  })
  return {
    ...{ table: 'power', row: 'equal samples shown to be the same within 10 %', replicates: String(n), promised },
    ...{ least: promised - 0.02, most: promised + 0.02 },
    ask: (random, seed) =>
      compared(pairOf({ scene: level, counts: [n, n], ratio: 1 }, random), seed, { margin }).differences[0].same
        .everywhere,
  }
})

/** Samples whose scatters or numbers are not alike: how far the usual band and the other one hold. Told, not promised. */
const unlikeQuestions: readonly RateQuestion[] = (
  [
    [3, 3, 2],
    [5, 5, 2],
    [3, 8, 1],
    [3, 8, 0.5],
    [8, 3, 0.5],
  ] as const
).flatMap(([a, b, widen]) =>
  (['pooled', 'separate'] as const).map((scatter): RateQuestion => {
    const pair = { scene: scatterScenes[3], counts: [a, b], ratio: 1, widen } as const
    const words = widen === 1 ? 'scatters alike' : `B scatters ${widen === 2 ? 'twice' : 'half'} as much`
    return {
      ...{ table: 'unlike', row: `${words}, ${scatter} scatter`, replicates: `${a} and ${b}`, promised: 0.95 },
      ...{ least: 0, most: 1 },
      ask: (random, seed) => holdsTruth(compared(pairOf(pair, random), seed, { scatter }), 1),
    }
  }),
)

/** Scatter to one side: most replicates a little under the mean, few far above it. */
function skewed(random: Random, steps: number): Float64Array {
  return new Float64Array(steps).fill(sceneScatter * (-Math.log(1 - random.uniform()) - 1))
}

/** Scatter that is far from normal. Told, not promised. */
const skewedQuestions: readonly RateQuestion[] = replicateNumbers.map((n): RateQuestion => {
  const scene = { name: 'skewed', words: 'skewed', draw: skewed }
  return {
    ...{ table: 'unlike', row: 'exponential scatter of the level', replicates: `${n} and ${n}`, promised: 0.95 },
    ...{ least: 0, most: 1 },
    ask: (random, seed) => holdsTruth(compared(pairOf({ scene, counts: [n, n], ratio: 1 }, random), seed), 1),
  }
})

/** The interval of the repeatability itself, and a ranking of four equal samples that tells two of them apart. */
const scatterQuestions: readonly RateQuestion[] = replicateNumbers.flatMap((n): RateQuestion[] => [
  {
    ...{ table: 'scatter', row: 'interval of the repeatability: curves move as a whole', replicates: String(n) },
    ...{ promised: 0.95, least: 0.94, most: 0.96 },
    ask: (random, seed) => holdsScatter(compared(pairOf({ scene: level, counts: [n, n], ratio: 1 }, random), seed)),
  },
  {
    ...{ table: 'scatter', row: 'two of four equal samples told apart in the ranking', replicates: String(n) },
    ...{ promised: 0.05, least: 0.04, most: 0.06 },
    ask: (random, seed) => {
      const all = ['A', 'B', 'C', 'D'].flatMap((sample) =>
        drawnSample({ sample, replicates: n, friction, scene: level }, random),
      )
      return compared(all, seed, { draws: 40 }).ranking?.pairs.some(({ low, high }) => low > 0 || high < 0) ?? false
    },
  },
])

function holdsScatter({ repeatability }: Comparison): boolean {
  return repeatability !== null && repeatability.low <= sceneScatter && sceneScatter <= repeatability.high
}

export const rateQuestions: readonly RateQuestion[] = [
  ...bandQuestions,
  ...falseAlarmQuestions,
  ...sameQuestions,
  ...powerQuestions,
  ...samePowerQuestions,
  ...scatterQuestions,
  ...unlikeQuestions,
  ...skewedQuestions,
]
