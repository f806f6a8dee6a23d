import type { SampledRun } from '../core/rig/index.ts'
import type { Feature } from '../core/terms/index.ts'

/**
 * Ratio of means over plain mean of friction over a turn, 1 + ½ Σ q·f·cos Δ, where friction swings by q and the axial
 * force by f: friction is the ratio of means, so that is what the study holds it against.
 */
export function meansFactor({ frictionRipple = [], forceRipple = [] }: SampledRun['run']['disturbances']): number {
  let factor = 1
  for (const q of frictionRipple) {
    for (const f of forceRipple) {
      if (q.order === f.order) factor += 0.5 * q.amplitude * f.amplitude * Math.cos(q.phase - f.phase)
    }
  }
  return factor
}

export type TrueFeatures = Partial<Record<Feature['name'], number>>

/** Odds of 95 to 5: the boundary share passes 95 % and 5 % where (v/x₀)^m is 1/19 and 19. */
const odds = 19

/**
 * Features of the true curve over the speeds of the data, from plain formulas and a search of their own: levels times
 * `factor`. What such a curve has not is absent.
 */
export function trueFeatures(
  { curve, run }: Pick<SampledRun, 'curve' | 'run'>,
  range: { slowest: number; fastest: number },
  factor: number,
): TrueFeatures {
  const { x0, m } = curve.parameters
  const regimes =
    curve.model === 'stribeck' || curve.model === 'stribeckSloped'
      ? { mixedBegins: x0 * (1 / odds) ** (1 / m), filmBegins: x0 * odds ** (1 / m) }
      : {}
  const boundary = boundaryLevel(curve, range.slowest)
  const level = boundary === undefined ? {} : { boundaryLevel: boundary * factor }
  return { ...regimes, ...level, ...minimumOf(run.friction.at, range, factor) }
}

/** Boundary friction at the slowest speed; a power law has none. */
function boundaryLevel({ model, parameters }: SampledRun['curve'], slowest: number): number | undefined {
  if (model === 'powerLaw') return undefined
  return model === 'stribeckSloped' ? parameters.h * slowest ** parameters.l : parameters.h
}

/** Golden section after a look at 400 speeds; nothing where the least friction lies at an end. */
function minimumOf(
  at: (speed: number) => number,
  { slowest, fastest }: { slowest: number; fastest: number },
  factor: number,
): TrueFeatures {
  const looks = 400
  const speed = (i: number) => slowest * (fastest / slowest) ** (i / looks)
  let best = 0
  for (let i = 1; i <= looks; i++) if (at(speed(i)) < at(speed(best))) best = i
  if (best === 0 || best === looks) return {}
  const section = (Math.sqrt(5) - 1) / 2
  let [low, high] = [Math.log(speed(best - 1)), Math.log(speed(best + 1))]
  while (high - low > 1e-9) {
    const [a, b] = [high - section * (high - low), low + section * (high - low)]
    if (at(Math.exp(a)) < at(Math.exp(b))) high = b
    else low = a
  }
  const minimumSpeed = Math.exp((low + high) / 2)
  return { minimumSpeed, minimumFriction: at(minimumSpeed) * factor }
}
