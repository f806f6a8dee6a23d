import type { Replicate } from '../../core/decide/index.ts'
import type { Random } from '../../core/numeric/index.ts'
import type { ScatterScene } from './scatterScenes.ts'

/** Speeds of the invented sweep: 0.5 to 200 mm/s, four steps a decade, as a lab would drive them. */
const steps: readonly number[] = Array.from({ length: 11 }, (_, i) => 5e-4 * 400 ** (i / 10))

/** What is drawn: a sample of so many replicates, whose true friction is `friction` at every speed. */
export interface DrawnSample {
  readonly sample: string
  readonly replicates: number
  readonly friction: number
  readonly scene: ScatterScene
  /** Times the scatter of the scene. */
  readonly widen?: number
}

/** Replicates of an invented sample. Their own uncertainty plays no part: a comparison takes the scatter between them. */
export const drawnSample = (drawn: DrawnSample, random: Random): Replicate[] =>
  Array.from({ length: drawn.replicates }, (_, i) => {
    const deviations = drawn.scene.draw(random, steps.length)
    const record = `${drawn.sample}-${i + 1}`
    return {
      ...{ record, name: record, sample: drawn.sample },
      points: steps.map((slidingSpeed, k) => ({
        slidingSpeed,
        friction: drawn.friction * Math.exp((drawn.widen ?? 1) * deviations[k]),
        own: 0,
        shared: {},
      })),
      window: { low: steps[0], high: steps[steps.length - 1] },
      ...{ rig: 'rig', fixture: 'fixture' },
      blocks: { day: null, operator: null, ballSet: null },
    }
  })

/** A speed in the middle of the sweep, at which effects are asked by name. */
export const middleSpeed = steps[5]
