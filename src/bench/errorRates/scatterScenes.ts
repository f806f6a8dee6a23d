import type { Random } from '../../core/numeric/index.ts'

/** A way in which replicates of one sample may differ from each other: deviations of ln μ at the steps of a sweep. */
export interface ScatterScene {
  readonly name: string
  readonly words: string
  readonly draw: (random: Random, steps: number) => Float64Array
}

/** Standard deviation between replicates in every scene, as a share of friction, unless its words say otherwise. */
export const sceneScatter = 0.05

const level = (random: Random, steps: number, size = sceneScatter): Float64Array =>
  new Float64Array(steps).fill(size * random.normal())

/** A level and steps that scatter each by themselves. */
const withNoise =
  (noise: number) =>
  (random: Random, steps: number): Float64Array =>
    level(random, steps).map((value) => value + noise * random.normal())

/** The slow and the fast end each by itself, with a bend between them. */
function twoEnds(random: Random, steps: number): Float64Array {
  const [slow, fast] = [random.normal(), random.normal()]
  return Float64Array.from({ length: steps }, (_, i) => {
    const share = 1 / (1 + Math.exp((8 * i) / (steps - 1) - 4))
    return sceneScatter * (share * slow + (1 - share) * fast)
  })
}

/** A level, and a slope that opens a fan towards the fast end. */
function fan(random: Random, steps: number): Float64Array {
  const [start, slope] = [random.normal(), random.normal()]
  return Float64Array.from({ length: steps }, (_, i) => sceneScatter * (0.4 * start + (slope * i) / (steps - 1)))
}

/** A smooth course without a plan: twelve waves whose lengths are drawn about a fifth of the range. */
function wandering(random: Random, steps: number): Float64Array {
  const waves = Array.from({ length: 12 }, () => ({
    turns: 3 * random.normal(),
    phase: 2 * Math.PI * random.uniform(),
    size: random.normal(),
  }))
  return Float64Array.from({ length: steps }, (_, i) => {
    const at = i / (steps - 1)
    const sum = waves.reduce((total, { turns, phase, size }) => total + size * Math.cos(turns * at + phase), 0)
    return (sceneScatter * sum) / Math.sqrt(6)
  })
}

/** From the mildest to the hardest: from curves that move as a whole to steps that know nothing of each other. */
export const scatterScenes: readonly ScatterScene[] = [
  { name: 'level', words: 'curves move as a whole', draw: level },
  { name: 'steps', words: 'as a whole, steps by a tenth of that', draw: withNoise(0.1 * sceneScatter) },
  { name: 'fan', words: 'level and slope', draw: fan },
  { name: 'twoEnds', words: 'slow and fast end each by itself', draw: twoEnds },
  { name: 'wandering', words: 'smooth wandering', draw: wandering },
  { name: 'noisySteps', words: 'as a whole, steps by a third of that', draw: withNoise(0.33 * sceneScatter) },
  {
    name: 'loneSteps',
    words: 'every step by itself',
    draw: (random, steps) => random.fillNormal(new Float64Array(steps)).map((value) => sceneScatter * value),
  },
]
