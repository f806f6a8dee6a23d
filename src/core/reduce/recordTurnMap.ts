import { fixtureGeometry } from '../fixture/index.ts'
import type { Channels, Reduction, Setup, Step } from '../terms/index.ts'
import { reduceDefaults } from './defaults.ts'
import { loadOf } from './recordStretches.ts'
import { type SignalSource, type Signals, signalSource } from './signals.ts'
import {
  cellsOf,
  type TurnMap,
  type TurnMapOptions,
  type TurnRows,
  turnMapDefaults,
  turnMapOptions,
  turnSpan,
} from './turnMap.ts'
import { type StepTurns, turnsByStep } from './turnsByStep.ts'
import { correctedTorque } from './zero/correctedTorque.ts'
import { valueAt } from './zero/corrections.ts'

/** What a turn map may show, after zeroes, blank and inertia. */
export const turnQuantities = ['friction', 'frictionSwing', 'axialForce', 'gap'] as const

/**
 * One of them. Friction is a plain number, its swing the share by which it differs from the value of its step, axial
 * force is in N, gap in m.
 */
export type TurnQuantity = (typeof turnQuantities)[number]

/** A turn map that knows at which turn each step began, in turns of the angle's own scale. */
export interface RecordTurnMap extends TurnMap {
  readonly steps: readonly { readonly number: number; readonly turn: number }[]
}

/** A record with what the reduction made of it. */
export interface ReducedChannels {
  readonly channels: Channels
  readonly setup: Setup
  readonly reduction: Reduction
}

/**
 * The turn map of a reduced record: rows in contact of every step that slides. The rows of cells are shared out to the
 * steps (see `turnsByStep`), so that a fast step of a thousand turns leaves room for a slow one of two. An inertia that
 * the setup does not know is not taken off here, so the first rows of a fast step may stand out.
 * Throws RangeError for a gap that the record has not.
 */
export function recordTurnMap(
  record: ReducedChannels,
  quantity: TurnQuantity,
  options: Partial<TurnMapOptions> = {},
): RecordTurnMap {
  const { channels, setup, reduction } = record
  const source = signalSource(channels, setup, fixtureGeometry(setup.fixture))
  const slides = reduction.steps.filter(({ kind }) => kind === 'slide')
  const pieces = turnPieces(record, source, quantity)
  const starts = slides.map(
    (step): StepTurns => ({
      number: step.number,
      turn: source.signals(step.from, step.from + 1).angle[0] / (2 * Math.PI),
      samples: step.to - step.from,
    }),
  )
  const columns = columnsFor(starts)
  const chosen = turnMapOptions({ ...turnMapDefaults, columns, ...options })
  const span = turnSpan(pieces())
  const turns = span === undefined ? [] : turnsByStep(starts, span, chosen)
  return {
    ...cellsOf(pieces, { columns: chosen.columns, turns }),
    steps: starts.map(({ number, turn }) => ({ number, turn })),
  }
}

/** Angle and value of every row that slides, page by page, so that a long record never lies in memory as a whole. */
export function turnPieces(
  record: ReducedChannels,
  source: SignalSource,
  quantity: TurnQuantity,
): () => Iterable<TurnRows> {
  const slides = record.reduction.steps.filter(({ kind }) => kind === 'slide')
  const rowsOf = rowsReader(record, source, quantity)
  return function* () {
    for (const step of slides) {
      for (const page of source.pages(step.from, step.to)) yield rowsOf(step, page)
    }
  }
}

/** As fine as the record is long: cells of five degrees for some thousand rows, of one degree from a million. */
function columnsFor(steps: readonly StepTurns[]): number {
  const samples = steps.reduce((sum, step) => sum + step.samples, 0)
  if (samples >= 1e6) return 360
  return samples >= 1e5 ? 180 : 72
}

function rowsReader(
  { setup, reduction }: ReducedChannels,
  source: SignalSource,
  quantity: TurnQuantity,
): (step: Step, signals: Signals) => TurnRows {
  const geometry = fixtureGeometry(setup.fixture)
  const { contactShare } = { ...reduceDefaults, ...setup.options }
  const corrections = {
    forceZero: reduction.forceZero,
    blank: reduction.torqueBlank,
    inertia: setup.rig.inertia ?? 0,
  }
  const limit = source.hasForce ? contactShare * loadOf(reduction, setup) : Number.NEGATIVE_INFINITY
  const perFriction = geometry.loadFactor * geometry.lever
  const level = new Map(reduction.points.map(({ rows, friction }) => [rows.from, friction ?? Number.NaN]))
  return (step, signals) => {
    const force = signals.axialForce.map((value, i) => value - valueAt(corrections.forceZero, signals.time[i]))
    const friction = (): Float64Array =>
      correctedTorque(signals, corrections).map((torque, i) => (sliding(step) * torque) / (perFriction * force[i]))
    const values = {
      friction,
      frictionSwing: () => friction().map((value) => value / (level.get(step.from) ?? Number.NaN) - 1),
      axialForce: () => force,
      gap: () => signals.gap ?? missing('gap'),
    }
    const value = values[quantity]().map((one, i) => (force[i] < limit ? Number.NaN : one))
    return { angle: signals.angle, value }
  }
}

/** Which way the step slides: friction is counted along it. */
const sliding = ({ target }: Step): 1 | -1 => (target < 0 ? -1 : 1)

function missing(name: string): never {
  throw new RangeError(`this record has no channel ${name}`)
}
