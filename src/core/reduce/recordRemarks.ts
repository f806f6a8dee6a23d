import { printQuantity } from '../quantity/index.ts'
import type { Point, ReduceOptions, Remark, Setup } from '../terms/index.ts'
import type { SignalSource } from './signals.ts'
import type { ZeroCorrections } from './zero/corrections.ts'

/** What the findings on a whole record are made from. */
export interface RecordSeen {
  readonly source: SignalSource
  readonly corrections: ZeroCorrections
  readonly setup: Setup
  readonly options: ReduceOptions
  readonly points: readonly Point[]
  readonly load: number
  readonly wantsTurns: boolean
}

/** Findings on the record as a whole. */
export function recordRemarks(seen: RecordSeen): Remark[] {
  return [
    neverTouched(seen),
    forceZeroMissing(seen),
    forceZeroDrift(seen),
    torqueBlankMissing(seen),
    angleFromSpeed(seen),
    oneSpeedOnly(seen),
    directionsDiffer(seen),
  ].filter((remark) => remark !== undefined)
}

function neverTouched({ points, source, load }: RecordSeen): Remark | undefined {
  if (points.length > 0 || source.rows === 0 || !(load > 0)) return undefined
  const largest = source.force(0, source.rows).reduce((a, b) => Math.max(a, Math.abs(b)), 0)
  return {
    kind: 'contactLost',
    seen: largest,
    limit: load,
    unit: 'N',
    sentence:
      `Nothing in this record counts as contact: the axial force never exceeded ${printQuantity(largest, 'force', { digits: 3 })} ` +
      `where ${printQuantity(load, 'force', { digits: 3 })} was asked for.`,
    next: 'Check "axialForce" under "run" in the setup against what was commanded.',
  }
}

function forceZeroMissing({ corrections }: RecordSeen): Remark | undefined {
  if (corrections.forceZero.from !== 'none') return undefined
  return {
    kind: 'forceZeroMissing',
    seen: 0,
    limit: 1,
    unit: '',
    sentence: 'The record holds no stretch without contact, so the zero of the axial force is taken as it came.',
    next: 'Record some seconds with the fixture lifted before and after the sweep: a zero wrong by δ moves all friction by −δ/F.',
  }
}

function forceZeroDrift({ corrections, load, options, source }: RecordSeen): Remark | undefined {
  const { slope } = corrections.forceZero
  if (slope === 0 || source.rows === 0) return undefined
  const [begin] = source.time(0, 1)
  const [end] = source.time(source.rows - 1, source.rows)
  const drift = Math.abs(slope * (end - begin)) / load
  const limit = options.biasLimit / 10
  if (!(drift > limit)) return undefined
  return {
    kind: 'forceZeroDrift',
    seen: drift,
    limit,
    unit: '',
    sentence: `The zero of the axial force drifts by ${printQuantity(drift, 'ratio', { digits: 2 })} of the load over the record; the drift is taken off.`,
    next: 'Wait until fixture and plate hold their temperature, and take a second zero after the sweep.',
  }
}

function torqueBlankMissing({ corrections }: RecordSeen): Remark | undefined {
  if (corrections.blank.from !== 'none') return undefined
  return {
    kind: 'torqueBlankMissing',
    seen: 0,
    limit: 1,
    unit: '',
    sentence: 'The record holds no torque without contact, so residual torque and drag are not taken off.',
    next: 'Run the same speeds with the fixture just lifted off, above all where friction is low or a cup is filled.',
  }
}

function angleFromSpeed({ source, wantsTurns }: RecordSeen): Remark | undefined {
  if (source.hasAngle || !wantsTurns) return undefined
  return {
    kind: 'angleFromSpeed',
    seen: 0,
    limit: 1,
    unit: '',
    sentence: 'The record has no angle; turns are summed from the speed.',
    next: 'Export the angle as well: then tilt and run-out keep their place from step to step.',
  }
}

function oneSpeedOnly({ points }: RecordSeen): Remark | undefined {
  const speeds = points.map((point) => point.slidingSpeed)
  const range = Math.max(...speeds) / Math.min(...speeds)
  if (points.length === 0 || range > 1.1) return undefined
  return {
    kind: 'oneSpeedOnly',
    seen: range,
    limit: 1.1,
    unit: '',
    sentence: `The record holds one speed only, ${printQuantity(speeds[0], 'velocity', { digits: 3 })}; there is no curve to fit.`,
    next: 'Read it as friction against time, or add steps at other speeds.',
  }
}

/** Largest difference between up and down at neighbouring speeds, in its own standard uncertainties. */
function directionsDiffer({ points, options }: RecordSeen): Remark | undefined {
  const usable = points.filter((point) => point.trusted && point.friction !== null && point.ownUncertainty !== null)
  const down = usable.filter((point) => point.direction < 0)
  let worst: { share: number; speed: number; factor: number } | undefined
  for (const up of usable.filter((point) => point.direction > 0)) {
    const twin = down.find(
      (point) => Math.abs(Math.log(point.slidingSpeed / up.slidingSpeed)) < options.settleTolerance * 2,
    )
    if (twin === undefined || up.friction === null || twin.friction === null) continue
    const difference = Math.abs(up.friction - twin.friction)
    const factor = difference / Math.hypot(up.ownUncertainty ?? 0, twin.ownUncertainty ?? 0)
    const share = difference / Math.abs(up.friction)
    if (worst === undefined || share > worst.share) worst = { share, speed: up.slidingSpeed, factor }
  }
  if (worst === undefined || !(worst.factor > 4) || !(worst.share > options.biasLimit)) return undefined
  return {
    kind: 'directionsDiffer',
    seen: worst.share,
    limit: options.biasLimit,
    unit: '',
    sentence: `Up and down differ by ${printQuantity(worst.share, 'ratio', { digits: 2 })} at ${printQuantity(worst.speed, 'velocity', { digits: 3 })}: run-in, starvation, heating or a film that builds up.`,
    next: 'Report both directions, not their mean; repeat the sweep to see whether it is run in.',
  }
}
