import { correlationLikelihood } from './correlatedFit.ts'
import { noiseCorrelation, type SharedNoise } from './noiseCorrelation.ts'
import { isSignal, openBeliefs, pooledRipple, type RecordRippleFit, recordRipple } from './recordRipple.ts'
import { type ForceRipple, frictionRegression, type StepProducts, stepProducts } from './stepProducts.ts'
import type { StepRows } from './stepRows.ts'

/** Fewest rows that a step may keep. */
export const fewestKept = 8

/** What the steps of a record say together of noise and ripple. */
export interface Learned {
  readonly products: readonly (StepProducts | undefined)[]
  /** Index of each step among the usable ones. */
  readonly place: readonly number[]
  readonly usable: readonly StepProducts[]
  readonly noise: SharedNoise
  readonly ripple: RecordRippleFit
}

/** Ripple of the force that the record shows, for the orders whose friction ripple or force ripple is clear. */
export function forceRippleOf({ ripple, usable }: Learned): ForceRipple[] {
  return ripple.measured.flatMap((measured) => {
    const pooled = pooledRipple({ ...measured, friction: measured.force }, usable, { scale: 'absolute' })
    return pooled === undefined || !isSignal(pooled)
      ? []
      : [{ order: measured.order, cosine: pooled.cosine, sine: pooled.sine }]
  })
}

/** @param starts first row that is used of each step */
export function learn(
  all: readonly StepRows[],
  starts: readonly number[],
  { orders, forceRipple }: { orders: readonly number[]; forceRipple: readonly ForceRipple[] },
): Learned {
  const products = all.map((rows, s) =>
    rows.force.length - starts[s] < fewestKept ? undefined : stepProducts(rows, starts[s], forceRipple),
  )
  const usable = products.filter((step) => step !== undefined)
  let count = 0
  const place = products.map((step) => (step === undefined ? -1 : count++))
  const noise = noiseCorrelation(
    usable.map((step) => {
      const chosen = fittable(step, orders)
      const regression = frictionRegression(step, step.plainFriction, chosen)
      return correlationLikelihood(regression, openBeliefs(step, chosen))
    }),
  )
  const ripple = recordRipple(
    usable,
    orders,
    noise.steps.map((step) => step.correlation),
  )
  return { products, place, usable, noise, ripple }
}

/** Orders that a step's rows can carry. */
const fittable = (step: StepProducts, orders: readonly number[]): readonly number[] =>
  orders.slice(0, Math.max(0, Math.floor((step.rows / 4 - 1) / 2)))
