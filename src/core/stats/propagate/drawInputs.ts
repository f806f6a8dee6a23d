import { cholesky, type Random } from '../../numeric/index.ts'
import type { Distribution } from './distribution.ts'
import { drawFrom } from './drawFrom.ts'
import { correlationMatrix, type InputCorrelation } from './model.ts'

/** Fills an array with one draw of all inputs. */
export type DrawInputs = (random: Random, out: Float64Array) => void

/** All that can stop a joint draw. */
export type DrawFault =
  /** No distribution has these correlations together. */
  | { readonly why: 'impossible' }
  /** Correlation is drawn between normal inputs alone (JCGM 101:2008, 6.4.8). */
  | { readonly why: 'notNormal'; readonly input: number }

/** How to draw all inputs together, correlated normal ones by the Cholesky factor of their covariance (JCGM 101:2008, 6.4.8.3). */
export function drawInputs(
  inputs: readonly Distribution[],
  correlations: readonly InputCorrelation[],
): { readonly ok: true; readonly draw: DrawInputs } | { readonly ok: false; readonly fault: DrawFault } {
  const joined = [...new Set(correlations.flatMap(({ first, second }) => [first, second]))].sort((a, b) => a - b)
  const odd = joined.find((i) => inputs[i]?.is !== 'normal')
  if (odd !== undefined) return { ok: false, fault: { why: 'notNormal', input: odd } }
  const place = new Map(joined.map((input, at) => [input, at]))
  const matrix = correlationMatrix(
    joined.length,
    correlations.map(({ first, second, coefficient }) => ({
      first: place.get(first) ?? 0,
      second: place.get(second) ?? 0,
      coefficient,
    })),
  )
  const factor = joined.length === 0 ? matrix : cholesky(matrix, joined.length)
  if (factor === undefined) return { ok: false, fault: { why: 'impossible' } }
  const alone = inputs.flatMap((input, i) => (place.has(i) ? [] : [{ input, i }]))
  const z = new Float64Array(joined.length)
  return {
    ok: true,
    draw(random, out) {
      for (const { input, i } of alone) out[i] = drawFrom(input, random)
      random.fillNormal(z)
      for (let a = 0; a < z.length; a++) {
        const input = inputs[joined[a]]
        if (input.is !== 'normal') continue
        let sum = 0
        for (let b = 0; b <= a; b++) sum += factor[a * z.length + b] * z[b]
        out[joined[a]] = input.value + input.standardUncertainty * sum
      }
    },
  }
}
