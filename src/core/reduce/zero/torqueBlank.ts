import type { Step, TorqueBlank } from '../../terms/index.ts'
import { type CorrelatedFit, correlatedFit, correlationLikelihood } from '../estimate/correlatedFit.ts'
import { addProducts, type LaggedProducts, laggedProducts } from '../estimate/laggedProducts.ts'
import { noiseCorrelation } from '../estimate/noiseCorrelation.ts'
import { settledFrom } from '../estimate/settled.ts'
import type { SignalSource, Signals } from '../signals.ts'
import { accelerationOf } from './correctedTorque.ts'
import { noTorqueBlank } from './corrections.ts'

/** Once-per-turn terms and a fitted inertia are taken off where they exceed this many standard uncertainties. */
const clearFactor = 4

/** A speed range (largest over smallest) that lets level and slope be told apart. */
const speedRange = 1.5

const turnOrders = [1, 2] as const

/** A blank's speed counts as held within this share of its target. */
const settleTolerance = 0.02
const fewestRows = 5

/** The torque blank and the inertia that it showed. */
export interface BlankFit {
  readonly blank: TorqueBlank
  /** Moment of inertia seen while the speed changed, where it was clear. kg·m² */
  readonly inertia: number | undefined
}

/**
 * Torque without contact against speed: M₀ + M₁Ω, what repeats every turn where an angle tells it, and the inertia
 * where the speed changed enough. In a filled cup the same stretch carries the drag of the liquid.
 *
 * @param knownInertia taken off first, kg·m²; undefined to fit it
 */
export function torqueBlank(steps: readonly Step[], source: SignalSource, knownInertia: number | undefined): BlankFit {
  const blanks = steps.filter((step) => step.kind === 'blank' && step.to - step.from >= fewestRows)
  if (blanks.length === 0) return { blank: noTorqueBlank, inertia: knownInertia }
  const speeds = blanks.map((step) => Math.abs(step.target))
  const sloped = Math.max(...speeds) > speedRange * Math.min(...speeds)
  const layout = { sloped, orders: turnOrders, inertia: knownInertia }
  const full = fitOf(blanks.map((step) => blankProducts(step, source, layout)))
  const simple = fitOf(blanks.map((step) => blankProducts(step, source, { ...layout, orders: [] })))
  if (simple === undefined) return { blank: noTorqueBlank, inertia: knownInertia }
  const first = 2 + (sloped ? 1 : 0)
  const turn = full === undefined ? [] : clearTurns(full, first)
  const chosen = turn.length > 0 && full !== undefined ? full : simple
  const inertia = knownInertia ?? clear(chosen, 1)
  return {
    inertia,
    blank: {
      from: 'blank',
      level: chosen.coefficients[0],
      perSpeed: sloped ? chosen.coefficients[2] : 0,
      covariance: sloped
        ? [entry(chosen, 0, 0), entry(chosen, 0, 2), entry(chosen, 2, 2)]
        : [entry(chosen, 0, 0), 0, 0],
      turn,
      rows: blanks.reduce((sum, step) => sum + step.to - step.from, 0),
    },
  }
}

/** Standard uncertainty of the blank at a speed, N·m. */
export function blankUncertainty(blank: TorqueBlank, speed: number): number {
  const [level, both, slope] = blank.covariance
  return Math.sqrt(Math.max(0, level + 2 * both * speed + slope * speed * speed))
}

interface Layout {
  readonly sloped: boolean
  readonly orders: readonly number[]
  readonly inertia: number | undefined
}

/** Columns: level, acceleration, speed if told apart, turn terms; torque last. */
function blankProducts(step: Step, source: SignalSource, layout: Layout): LaggedProducts {
  const { time, angularVelocity, torque, angle } = settledRows(step, source)
  const acceleration = accelerationOf(time, angularVelocity)
  const known = layout.inertia ?? 0
  const columns: Float64Array[] = [
    new Float64Array(time.length).fill(1),
    layout.inertia === undefined ? acceleration : new Float64Array(time.length),
  ]
  if (layout.sloped) columns.push(angularVelocity)
  for (const order of layout.orders) {
    columns.push(angle.map((a) => Math.cos(order * a)))
    columns.push(angle.map((a) => Math.sin(order * a)))
  }
  return laggedProducts([...columns, torque.map((value, i) => value - known * acceleration[i])])
}

/**
 * Rows at a held speed only, where there is one: while the speed rises within a few samples its derivative is too coarse
 * to tell inertia, and what is left of it would pass for drag.
 */
function settledRows(step: Step, source: SignalSource): Signals {
  const all = source.signals(step.from, step.to)
  const from = settledFrom(all.angularVelocity.map(Math.abs), step.target, settleTolerance)
  return from === undefined || all.time.length - from < fewestRows ? all : source.signals(step.from + from, step.to)
}

function fitOf(parts: readonly LaggedProducts[]): CorrelatedFit | undefined {
  const products = addProducts(parts)
  // A column of nothing (no acceleration, or a known inertia) is held at zero by a belief.
  const beliefs = Array.from({ length: products.size - 1 }, (_, i) =>
    products.same[i * products.size + i] > 0 ? undefined : { mean: 0, deviation: 1 },
  )
  const noise = noiseCorrelation([correlationLikelihood(products, beliefs)])
  return correlatedFit(products, noise.steps[0].correlation, beliefs)
}

function clearTurns(fit: CorrelatedFit, first: number): TorqueBlank['turn'] {
  return turnOrders.flatMap((order, i) => {
    const at = first + 2 * i
    const cosine = fit.coefficients[at]
    const sine = fit.coefficients[at + 1]
    const scaled = cosine ** 2 / entry(fit, at, at) + sine ** 2 / entry(fit, at + 1, at + 1)
    return scaled > 2 * clearFactor ** 2 ? [{ order, cosine, sine }] : []
  })
}

function clear(fit: CorrelatedFit, at: number): number | undefined {
  const value = fit.coefficients[at]
  return value > clearFactor * Math.sqrt(entry(fit, at, at)) ? value : undefined
}

const entry = (fit: CorrelatedFit, row: number, column: number): number =>
  fit.covariance[row * fit.coefficients.length + column]
