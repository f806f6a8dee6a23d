import { fixtureGeometry } from '../fixture/index.ts'
import type { Channels, Reduction, Setup, Step } from '../terms/index.ts'
import { reduceDefaults } from './defaults.ts'
import { correctedTorque } from './estimate/stepRows.ts'
import { loadOf } from './recordStretches.ts'
import { signalSource } from './signals.ts'
import { type TurnMap, type TurnMapOptions, type TurnRows, turnMapOfPieces } from './turnMap.ts'
import { valueAt } from './zero/corrections.ts'

/** What a turn map may show, after zeroes, blank and inertia. */
export const turnQuantities = ['friction', 'axialForce', 'gap'] as const

/** One of them. Friction is a plain number, axial force in N, gap in m. */
export type TurnQuantity = (typeof turnQuantities)[number]

/** A turn map that knows at which turn each step began, in turns of the angle's own scale. */
export interface RecordTurnMap extends TurnMap {
  readonly steps: readonly { readonly number: number; readonly turn: number }[]
}

/**
 * The turn map of a reduced record: rows in contact of every step that slides. An inertia that the setup does not
 * know is not taken off here, so the first rows of a fast step may stand out. Throws RangeError for a gap that the record has not.
 */
export function recordTurnMap(
  record: { readonly channels: Channels; readonly setup: Setup; readonly reduction: Reduction },
  quantity: TurnQuantity,
  options: Partial<TurnMapOptions> = {},
): RecordTurnMap {
  const { channels, setup, reduction } = record
  const geometry = fixtureGeometry(setup.fixture)
  const source = signalSource(channels, setup, geometry)
  const { contactShare } = { ...reduceDefaults, ...setup.options }
  const corrections = {
    forceZero: reduction.forceZero,
    blank: reduction.torqueBlank,
    inertia: setup.rig.inertia ?? 0,
  }
  const limit = source.hasForce ? contactShare * loadOf(reduction, setup) : Number.NEGATIVE_INFINITY
  const perFriction = geometry.loadFactor * geometry.lever
  const rowsOf = (step: Step): TurnRows => {
    const signals = source.signals(step.from, step.to)
    const force = signals.axialForce.map((value, i) => value - valueAt(corrections.forceZero, signals.time[i]))
    const values = {
      friction: () =>
        correctedTorque(signals, corrections).map((torque, i) => (sliding(step) * torque) / (perFriction * force[i])),
      axialForce: () => force,
      gap: () => signals.gap ?? missing('gap'),
    }
    return {
      angle: signals.angle,
      value: values[quantity]().map((value, i) => (force[i] < limit ? Number.NaN : value)),
    }
  }
  const slides = reduction.steps.filter(({ kind }) => kind === 'slide')
  // One step at a time, so that a long record never lies in memory as a whole.
  const pieces = function* (): Iterable<TurnRows> {
    for (const step of slides) yield rowsOf(step)
  }
  const steps = slides.map(({ number, from }) => ({
    number,
    turn: source.signals(from, from + 1).angle[0] / (2 * Math.PI),
  }))
  return { ...turnMapOfPieces(pieces, options), steps }
}

/** Which way the step slides: friction is counted along it. */
const sliding = ({ target }: Step): 1 | -1 => (target < 0 ? -1 : 1)

function missing(name: string): never {
  throw new RangeError(`this record has no channel ${name}`)
}
