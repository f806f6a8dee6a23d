import { type SphereOnFlat, specificWearRate } from '../../contact/index.ts'
import { fixtureGeometry } from '../../fixture/index.ts'
import type { Interval, MetrePerSecond } from '../../terms/index.ts'
import { reduceDefaults } from '../defaults.ts'
import type { ReducedChannels } from '../recordTurnMap.ts'
import { gapWear } from './gapWear.ts'
import { movedByWear } from './movedByWear.ts'
import { type FinalScar, pressureHistory } from './pressureHistory.ts'
import { type ScarWear, scarWear, usualReadingUncertainty } from './scarWear.ts'
import { type SlidHistory, slidHistory } from './slidHistory.ts'
import { type TrackWear, trackWearOfSections, trackWearOfWidth } from './trackWear.ts'
import type { RecordWear, WearRate } from './wearAnswer.ts'
import { wearRemarks, wearSentences } from './wearWords.ts'
import { endRadiusOf, sunkWear, trackRadiusOf } from './wornBodies.ts'

/**
 * Wear from what the setup says was found after the test (scars, profiles, track width) and from the gap. `sphere` is the fresh elastic contact;
 * undefined where the bodies' moduli are not known, and then there is no pressure history.
 */
export function recordWear(record: ReducedChannels, sphere: SphereOnFlat | undefined): RecordWear {
  const { setup, reduction } = record
  const { worn = {}, fixture } = setup
  const slid = slidHistory(record)
  const radius = endRadiusOf(fixture)
  const seed = setup.options.seed ?? reduceDefaults.seed
  const balls =
    radius === null ? undefined : scarWear(worn.scars ?? [], { radius, uncertainty: worn.scarUncertainty, seed })
  const track = trackOf(record)
  const seen = gapWear(record, slid.distance)
  const gap = seen === undefined ? null : { ...seen, asIfBalls: sunkWear(fixture, seen.depth) }
  const final = finalScar(record, { balls, gap, sphere, slid })
  const speeds = new Map<number, MetrePerSecond>(reduction.points.map((p) => [p.step, Math.abs(p.slidingSpeed)]))
  const pressure = final === undefined ? [] : pressureHistory(final, slid, speeds)
  const bare = {
    slid,
    balls: balls ?? null,
    track: track ?? null,
    gap,
    rates: ratesOf(record, { slid, balls, track, gap }),
    pressure,
    pressureFrom: pressure.length === 0 ? null : balls === undefined ? ('gap' as const) : ('scars' as const),
    moved: movedByWear(pressure, final, { slid, points: reduction.points }),
  }
  return { ...bare, sentences: wearSentences(bare, setup), remarks: wearRemarks(bare) }
}

function trackOf({ setup: { worn = {}, fixture } }: ReducedChannels): TrackWear | undefined {
  const trackRadius = trackRadiusOf(fixture)
  if (trackRadius === null) return undefined
  const bySections = trackWearOfSections(worn.sections ?? [], trackRadius, worn.sectionUncertainty)
  const endRadius = endRadiusOf(fixture)
  if (bySections !== undefined || worn.trackWidth === undefined || endRadius === null) return bySections
  const uncertainty = worn.trackWidthUncertainty ?? usualReadingUncertainty
  return trackWearOfWidth({ width: worn.trackWidth, uncertainty }, { trackRadius, endRadius })
}

function finalScar(
  { setup }: ReducedChannels,
  { balls, gap, sphere, slid }: Omit<Lost, 'track'> & { readonly sphere: SphereOnFlat | undefined },
): FinalScar | undefined {
  const ballRadius = endRadiusOf(setup.fixture)
  if (sphere === undefined || ballRadius === null || !(slid.load > 0)) return undefined
  const volume = balls === undefined ? (gap?.clear === true ? gap.asIfBalls.volume : undefined) : perContact(balls)
  if (volume === undefined) return undefined
  return {
    volume,
    ballRadius,
    sphere,
    distanceBefore: setup.worn?.distanceBefore ?? 0,
    load: slid.load,
  }
}

const perContact = ({ volume: { value, low, high }, scars: { length } }: ScarWear): Interval => ({
  value: value / length,
  low: low / length,
  high: high / length,
})

interface Lost {
  readonly slid: SlidHistory
  readonly balls: ScarWear | undefined
  readonly track: TrackWear | undefined
  readonly gap: RecordWear['gap']
}

/** Per contact: the load on one, and of the track all of them. */
function ratesOf(record: ReducedChannels, { slid, balls, track, gap }: Lost): readonly WearRate[] {
  const distance = slid.distance + (record.setup.worn?.distanceBefore ?? 0)
  if (!(distance > 0 && slid.load > 0)) return []
  const shared = sharedOf(record)
  const { contacts } = fixtureGeometry(record.setup.fixture)
  const rate = ({ value, low, high }: Interval, load: number, path: number): Interval => ({
    value: specificWearRate(value, load, path),
    low: specificWearRate(low, load, path),
    high: specificWearRate(high, load, path),
  })
  return [
    ...(balls === undefined
      ? []
      : [{ of: 'balls' as const, rate: rate(balls.volume, balls.scars.length * slid.load, distance), shared }]),
    ...(track === undefined
      ? []
      : [{ of: 'track' as const, rate: rate(track.volume, contacts * slid.load, distance), shared }]),
    ...(gap === null || !gap.clear
      ? []
      : [{ of: 'gap' as const, rate: rate(gap.asIfBalls.volume, slid.load, slid.distance), shared }]),
  ]
}

/** Load and distance are common to all wear rates of a rig and fixture. */
function sharedOf({ setup, reduction }: ReducedChannels): WearRate['shared'] {
  const geometry = fixtureGeometry(setup.fixture)
  const forces = reduction.points.map(({ axialForce }) => axialForce).filter((force) => force > 0)
  const force = forces.reduce((a, b) => a + b, 0) / forces.length
  return {
    forceScale: setup.rig.axialForce.scaleAccuracy / Math.sqrt(3),
    ...(forces.length === 0 ? {} : { forceZero: reduction.forceZero.levelUncertainty / force }),
    lever: geometry.leverUncertainty,
    loadFactor: geometry.loadFactorUncertainty,
  }
}
