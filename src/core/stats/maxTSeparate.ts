import type { Random } from '../numeric/index.ts'
import { curveScatter, type SampleCurves } from './curveScatter.ts'
import { RandomFrame } from './randomFrame.ts'

/**
 * The same for the difference of two samples that scatter unlike each other, with t = difference/√(s₁²/n₁ + s₂²/n₂): the mean of
 * each sample is turned among its own residuals. The ratio of the two scatters is taken from the data at each place, which makes
 * bands of three or four replicates wide rather than narrow (as the test of Welch and of Behrens and Fisher is).
 */
export function maxTSeparateDraws(
  samples: SampleCurves,
  { draws, random }: { readonly draws: number; readonly random: Random },
): Float64Array {
  if (samples.length !== 2) throw new RangeError(`separate scatter needs two samples, got ${samples.length}`)
  const sides = samples.map(sideOf)
  const largest = new Float64Array(draws)
  const { places } = sides[0]
  for (let draw = 0; draw < draws; draw++) {
    for (const { frame } of sides) frame.draw(random)
    let most = 0
    for (let i = 0; i < places; i++) {
      let difference = 0
      let variance = 0
      for (const [sign, { frame, columns, squares, count, part }] of [
        [1, sides[0]],
        [-1, sides[1]],
      ] as const) {
        frame.along(columns, i * count, part)
        difference += (sign * part[0]) / Math.sqrt(count)
        variance += (squares[i] - part[0] * part[0]) / (count - 1) / count
      }
      if (variance > 0) most = Math.max(most, (difference * difference) / variance)
    }
    largest[draw] = Math.sqrt(most)
  }
  return largest.sort()
}

function sideOf(curves: SampleCurves[number]) {
  const { residuals, places, deviation, degreesOfFreedom } = curveScatter([curves])
  const count = curves.length
  const inflation = Math.sqrt((degreesOfFreedom + 1) / degreesOfFreedom)
  const columns = new Float64Array(places * count)
  for (let i = 0; i < places; i++) for (let k = 0; k < count; k++) columns[i * count + k] = residuals[k][i] * inflation
  return {
    ...{ count, places, columns },
    frame: new RandomFrame([count], 1),
    part: new Float64Array(1),
    squares: deviation.map((d) => d * d * (degreesOfFreedom + 1)),
  }
}
