import { fixtureGeometry } from '../fixture/index.ts'
import type { Metre, MetrePerSecond, Ratio } from '../terms/index.ts'
import { conditionsFactor } from './conditions.ts'
import { sheetSteps } from './sheetSteps.ts'
import type { VirtualRun } from './virtualRun.ts'

/** What one step of a simulated record truly is. Rows `from` (inclusive) to `to` (exclusive). */
export interface TrueStep {
  readonly number: number
  readonly kind: 'slide' | 'blank' | 'ramp'
  /** As commanded, without sign; a ramp begins with it. */
  readonly slidingSpeed: MetrePerSecond
  /** Of the law at that speed, this load and temperature; null without contact and on a ramp, where it changes. */
  readonly friction: Ratio | null
  readonly from: number
  readonly to: number
}

/** The answer to a simulated record, and all that it was made from. */
export interface Truth {
  readonly seed: number
  readonly rows: number
  readonly lever: Metre
  readonly loadFactor: Ratio
  readonly contacts: number
  readonly steps: readonly TrueStep[]
  readonly run: VirtualRun
}

/** The answer without the record. Throws RangeError for a run without speeds or with a fixture that cannot exist. */
export function truthOf(run: VirtualRun, seed: number): Truth {
  const { lever, loadFactor, contacts } = fixtureGeometry(run.fixture)
  const planned = sheetSteps(run.sheet, lever)
  if (planned.length === 0) throw new RangeError('a run must have speeds, got none')
  const { axialForce, temperature } = run.sheet
  const factor = run.conditions === undefined ? 1 : conditionsFactor(run.conditions, axialForce, temperature)
  const steps = planned.map(({ number, kind, begins, law, from, to }): TrueStep => {
    const slidingSpeed = Math.abs(begins) * lever
    const ramp = law !== 'constant' && kind === 'slide'
    const friction = kind === 'blank' || ramp ? null : run.friction.at(slidingSpeed) * factor
    return { number, kind: ramp ? 'ramp' : kind, slidingSpeed, friction, from, to }
  })
  return { seed, rows: planned[planned.length - 1].to, lever, loadFactor, contacts, steps, run }
}
