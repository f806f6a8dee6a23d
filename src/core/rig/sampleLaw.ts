import type { Random } from '../numeric/index.ts'
import type { CurveModelName, MetrePerSecond } from '../terms/index.ts'
import { between, evenInLog } from './sampleNumbers.ts'

/** A member of the curve family with its parameters. */
export interface SampledLaw {
  readonly model: CurveModelName
  readonly parameters: Readonly<Record<string, number>>
}

/** How often each member is drawn. */
const shares: readonly (readonly [CurveModelName, number])[] = [
  ['stribeck', 0.5],
  ['stribeckSloped', 0.15],
  ['stribeckExponential', 0.2],
  ['powerLaw', 0.08],
  ['plateau', 0.07],
]

/** A law whose boundary level, minimum and transition lie inside the speeds in most draws. */
export function sampleLaw(random: Random, speeds: { slowest: MetrePerSecond; fastest: MetrePerSecond }): SampledLaw {
  const model = sampleModel(random.uniform())
  const decades = Math.log10(speeds.fastest / speeds.slowest)
  const inside = (share: number): MetrePerSecond => speeds.slowest * 10 ** (share * decades)
  const boundary = evenInLog(random, 0.05, 0.6)
  switch (model) {
    case 'plateau':
      return { model, parameters: { h: boundary } }
    case 'powerLaw': {
      const n = between(random, -0.3, 0.3)
      return { model, parameters: { k: boundary / inside(0.5) ** n, n } }
    }
    case 'stribeck':
    case 'stribeckSloped': {
      const x0 = inside(between(random, 0.3, 0.6))
      const m = between(random, 1.2, 3)
      const n = between(random, 0.25, 0.65)
      // Friction of the film at the transition: low enough that the curve turns up again behind it.
      const k = (boundary * between(random, 0.08, 0.35)) / x0 ** n
      if (model === 'stribeck') return { model, parameters: { k, n, h: boundary, x0, m } }
      const l = between(random, -0.08, 0.08)
      return { model, parameters: { k, n, h: boundary / speeds.slowest ** l, x0, m, l } }
    }
    case 'stribeckExponential': {
      const c = boundary * between(random, 0.2, 0.6)
      const k = (boundary * between(random, 0.1, 0.6)) / speeds.fastest
      return { model, parameters: { c, h: boundary, k, x0: inside(between(random, 0.25, 0.55)) } }
    }
  }
}

function sampleModel(uniform: number): CurveModelName {
  let sum = 0
  for (const [model, share] of shares) {
    sum += share
    if (uniform < sum) return model
  }
  return shares[shares.length - 1][0]
}
