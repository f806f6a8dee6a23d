import { fixtureGeometry, normalLoad } from '../../fixture/index.ts'
import type { Metre, Newton } from '../../terms/index.ts'
import { reduceDefaults } from '../defaults.ts'
import { loadOf } from '../recordStretches.ts'
import type { ReducedChannels } from '../recordTurnMap.ts'
import { signalSource } from '../signals.ts'
import { valueAt } from '../zero/corrections.ts'

/** How far a contact had slid, and under which load, when a step was half done. */
export interface SlidStep {
  readonly step: number
  /** Since the record began. */
  readonly distance: Metre
  /** ∫W ds of one contact, N·m. */
  readonly work: number
}

/** Sliding of a whole record. */
export interface SlidHistory {
  readonly steps: readonly SlidStep[]
  readonly distance: Metre
  readonly work: number
  /** Mean normal load on one contact over the distance. */
  readonly load: Newton
}

/** A pause between rows counts as sliding for no longer than so many usual intervals. */
const longestInterval = 20

/**
 * Distance and ∫W ds of one contact from speed and force, rows in contact alone. The path is the integral of the speed reading, so that it
 * also holds where there is no angle channel.
 */
export function slidHistory({ channels, setup, reduction }: ReducedChannels): SlidHistory {
  const geometry = fixtureGeometry(setup.fixture)
  const source = signalSource(channels, setup, geometry)
  const { contactShare } = { ...reduceDefaults, ...setup.options }
  const least = source.hasForce ? contactShare * loadOf(reduction, setup) : Number.NEGATIVE_INFINITY
  const most = longestInterval * source.sampleInterval
  let distance = 0
  let work = 0
  const steps: SlidStep[] = []
  for (const step of reduction.steps) {
    if (step.kind !== 'slide') continue
    const before = { distance, work }
    let last = step.from > 0 ? source.time(step.from - 1, step.from)[0] : Number.NaN
    for (const { time, angularVelocity, axialForce, rows } of source.pages(step.from, step.to)) {
      for (let i = 0; i < rows; i++) {
        const interval = Number.isNaN(last) ? source.sampleInterval : Math.min(most, Math.max(0, time[i] - last))
        last = time[i]
        const force = axialForce[i] - valueAt(reduction.forceZero, time[i])
        if (!(force >= least)) continue
        const path = Math.abs(angularVelocity[i]) * geometry.lever * interval
        distance += path
        work += normalLoad(geometry, force) * path
      }
    }
    steps.push({
      step: step.number,
      distance: (before.distance + distance) / 2,
      work: (before.work + work) / 2,
    })
  }
  return { steps, distance, work, load: distance > 0 ? work / distance : 0 }
}
