import { fixtureGeometry } from '../../fixture/index.ts'
import { linearLeastSquares } from '../../numeric/index.ts'
import { naturalFrequency } from '../../rig/index.ts'
import { studentTQuantile } from '../../stats/index.ts'
import type { Interval, Step } from '../../terms/index.ts'
import type { ReducedChannels } from '../recordTurnMap.ts'
import { signalSource } from '../signals.ts'
import { type CriticalSpeedBracket, criticalSpeedBracket } from './criticalSpeed.ts'
import { type StepVibration, stepVibration } from './stepVibration.ts'
import type { RecordStickSlip } from './stickSlipAnswer.ts'
import { stickSlipRemarks, stickSlipSentences } from './stickSlipWords.ts'
import { type VibrationRows, vibrationRows } from './vibrationRows.ts'

/**
 * Looks at every step that slides for cycles, tells stick–slip from waves fixed to the turn, from the controller's own oscillation and from
 * ringing, and brackets the speed at which it ends.
 */
export function recordStickSlip(record: ReducedChannels): RecordStickSlip {
  const { setup } = record
  const steps = stepsOf(record)
  const { inertia, torsionalStiffness } = setup.rig
  const natural =
    inertia === undefined || torsionalStiffness === undefined || !(inertia > 0)
      ? null
      : naturalFrequency(torsionalStiffness, inertia)
  const found = steps.map(({ rows, blank, context }) =>
    stepVibration(rows, { ...context, naturalFrequency: natural, blank }),
  )
  const bracket = criticalSpeedBracket(found)
  const bare = {
    steps: found,
    criticalSpeed: bracket,
    naturalFrequency: natural,
    stiffnessGiven: torsionalStiffness ?? null,
    frequencyExponent: frequencyExponent(found),
    damping: impliedDamping(found, bracket, record),
  }
  return { ...bare, sentences: stickSlipSentences(bare), remarks: stickSlipRemarks(found) }
}

interface Looked {
  readonly rows: VibrationRows
  readonly blank: VibrationRows | undefined
  readonly context: { readonly step: number; readonly slidingSpeed: number }
}

function stepsOf({ channels, setup, reduction }: ReducedChannels): readonly Looked[] {
  const geometry = fixtureGeometry(setup.fixture)
  const source = signalSource(channels, setup, geometry)
  const corrections = { forceZero: reduction.forceZero, blank: reduction.torqueBlank }
  const blanks = reduction.steps.filter(({ kind }) => kind === 'blank')
  return reduction.points.flatMap((point): readonly Looked[] => {
    const step = reduction.steps.find(({ kind, from }) => kind === 'slide' && from === point.rows.from)
    if (step === undefined || point.friction === null) return []
    const rows = vibrationRows(step, { source, geometry, corrections, from: point.rows.kept })
    if (rows === undefined) return []
    const lifted = nearest(blanks, step)
    const blank =
      lifted && vibrationRows(lifted, { source, geometry, corrections, from: lifted.from, load: point.axialForce })
    return [{ rows, blank, context: { step: point.step, slidingSpeed: Math.abs(point.slidingSpeed) } }]
  })
}

function nearest(blanks: readonly Step[], { target }: Step): Step | undefined {
  const apart = (blank: Step): number => Math.abs(Math.log(Math.abs(blank.target) / Math.abs(target)))
  return blanks.length === 0 ? undefined : blanks.reduce((best, blank) => (apart(blank) < apart(best) ? blank : best))
}

/** Straight line through ln f against ln v; three steps or more. */
function frequencyExponent(steps: readonly StepVibration[]): Interval | null {
  const seen = steps.flatMap(({ verdict, numbers, slidingSpeed }) =>
    verdict === 'stickSlip' && numbers !== null
      ? [{ x: Math.log(slidingSpeed), y: Math.log(numbers.frequency.value) }]
      : [],
  )
  if (new Set(seen.map(({ x }) => x)).size < 3) return null
  const fit = linearLeastSquares(
    [seen.map(() => 1), seen.map(({ x }) => x)],
    seen.map(({ y }) => y),
  )
  const variance = (fit.residualSumOfSquares / fit.degreesOfFreedom) * fit.inverseGram[3]
  const half = studentTQuantile(0.975, fit.degreesOfFreedom) * Math.sqrt(variance)
  const value = fit.coefficients[1]
  return { value, low: value - half, high: value + half }
}

/** ζ = ln(1 + (ΔF/(v√(km)))²)/4π, with the force drop of the fastest step that sticks and both ends of the bracket. */
function impliedDamping(
  steps: readonly StepVibration[],
  bracket: CriticalSpeedBracket | null,
  { setup, reduction }: ReducedChannels,
): RecordStickSlip['damping'] {
  const { inertia, torsionalStiffness } = setup.rig
  if (bracket?.slides == null || inertia === undefined || torsionalStiffness === undefined) return null
  const last = steps.find(({ slidingSpeed }) => slidingSpeed === bracket.sticks)
  if (last?.numbers == null) return null
  const { lever, loadFactor } = fixtureGeometry(setup.fixture)
  const force = reduction.points.find(({ step }) => step === last.step)?.axialForce ?? Number.NaN
  const drop = (last.numbers.amplitude.value / 2) * loadFactor * force
  const impedance = Math.sqrt(torsionalStiffness * inertia) / lever ** 2
  const at = (speed: number): number => Math.log1p((drop / (speed * impedance)) ** 2) / (4 * Math.PI)
  const low = at(bracket.slides)
  return Number.isFinite(low) ? { low, high: at(bracket.sticks) } : null
}
