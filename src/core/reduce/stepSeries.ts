import { fixtureGeometry } from '../fixture/index.ts'
import { autocorrelations } from '../stats/index.ts'
import type { Metre, Newton, Radian, Second, Step } from '../terms/index.ts'
import { reduceDefaults } from './defaults.ts'
import { loadOf } from './recordStretches.ts'
import type { ReducedChannels } from './recordTurnMap.ts'
import { signalSource } from './signals.ts'
import { correctedTorque } from './zero/correctedTorque.ts'
import { valueAt } from './zero/corrections.ts'

/** The rows of one step and around it, after zeroes, blank and inertia. */
export interface StepSeries {
  readonly time: ArrayLike<Second>
  readonly angle: ArrayLike<Radian>
  /** NaN where contact was lost. */
  readonly friction: ArrayLike<number>
  readonly axialForce: ArrayLike<Newton>
  /** null where the record has none. */
  readonly gap: ArrayLike<Metre> | null
  /** Places in these rows: where the step begins and ends, and from which its rows count. */
  readonly begin: number
  readonly kept: number
  readonly end: number
}

/**
 * Rows of a step of a reduced record, from the end of the step before to the begin of the next, so that a window can be
 * moved among them. Throws RangeError for a step that does not slide.
 */
export function stepSeries({ channels, setup, reduction }: ReducedChannels, step: Step): StepSeries {
  if (step.kind !== 'slide') throw new RangeError(`step ${step.number} does not slide`)
  const geometry = fixtureGeometry(setup.fixture)
  const source = signalSource(channels, setup, geometry)
  const { steps, forceZero, torqueBlank, points } = reduction
  const from = Math.max(0, ...steps.map(({ to }) => to).filter((to) => to <= step.from))
  const to = Math.min(channels.rows, ...steps.map((other) => other.from).filter((begin) => begin >= step.to))
  const signals = source.signals(from, to)
  const corrections = { forceZero, blank: torqueBlank, inertia: setup.rig.inertia ?? 0 }
  const axialForce = signals.axialForce.map((value, i) => value - valueAt(forceZero, signals.time[i]))
  const { contactShare } = { ...reduceDefaults, ...setup.options }
  const limit = source.hasForce ? contactShare * loadOf(reduction, setup) : Number.NEGATIVE_INFINITY
  const perFriction = ((step.target < 0 ? -1 : 1) / geometry.loadFactor) * (1 / geometry.lever)
  const friction = correctedTorque(signals, corrections).map((torque, i) =>
    axialForce[i] < limit ? Number.NaN : (torque * perFriction) / axialForce[i],
  )
  const kept = points.find(({ rows }) => rows.from === step.from)?.rows.kept ?? step.from
  return {
    time: signals.time,
    angle: signals.angle,
    friction,
    axialForce,
    gap: signals.gap,
    begin: step.from - from,
    kept: kept - from,
    end: step.to - from,
  }
}

/** Rows that an autocorrelation looks at: enough for any lag that matters. */
const mostRows = 200_000

/**
 * Autocorrelation of the readings of a step that count, about their value and the harmonics of the turn, at lag 0 and up.
 * null where there are too few rows.
 */
export function stepMemory(
  { friction, angle, kept, end }: StepSeries,
  point: Pick<ReducedChannels['reduction']['points'][number], 'friction' | 'frictionHarmonics'> | undefined,
  most: number,
): { readonly correlations: Float64Array; readonly readings: number } | null {
  const value = point?.friction ?? null
  if (value === null) return null
  const residual: number[] = []
  for (let i = kept; i < Math.min(end, kept + mostRows); i++) {
    const swing = (point?.frictionHarmonics ?? []).reduce(
      (sum, { order, amplitude, phase }) => sum + amplitude * Math.cos(order * angle[i] - phase),
      0,
    )
    const rest = friction[i] - value - Math.abs(value) * swing
    if (Number.isFinite(rest)) residual.push(rest)
  }
  if (residual.length < 10) return null
  const correlations = autocorrelations(residual, Math.min(most, residual.length >> 2))
  return correlations.every(Number.isFinite) ? { correlations, readings: residual.length } : null
}
