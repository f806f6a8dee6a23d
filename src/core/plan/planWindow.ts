import {
  entrainmentInPureSliding,
  filmNumbers,
  lnMinimumFilm,
  pureSlidingRatio,
  softShearTerms,
} from '../film/index.ts'
import type { MetrePerSecond, Ratio } from '../terms/index.ts'
import { bitOf } from './planLimit.ts'
import { type FilmModel, type FrictionModel, frictionModel } from './predictedFriction.ts'
import { thinnedPlane } from './thinnedPlane.ts'
import { type ForceLine, forceLine, type PlanBasis, type SpeedLine, speedLine } from './windowAxes.ts'

/** Axes of a window, each rising. */
export interface WindowAxes {
  readonly speeds: Float64Array
  readonly forces: Float64Array
}

/**
 * The plane of speed and load: what may be measured where, and by which limit not. Cell (speed i, force j) lies at
 * `j·speeds + i`. No value is ever NaN; `lambda` is null where no film can be predicted.
 */
export interface PlanWindow extends WindowAxes {
  /** One bit for each limit that is broken (see `limitsIn`); 0 where friction can be measured. */
  readonly broken: Uint16Array
  readonly friction: Float64Array
  readonly frictionLow: Float64Array
  readonly frictionHigh: Float64Array
  readonly lambda: Float64Array | null
  /** Relative standard uncertainty that a point there would have. */
  readonly uncertainty: Float64Array
  /** What the load alone decides: contact and pressure. */
  readonly byForce: ForceLine
}

/** `count` places from `low` to `high`, evenly spread in the logarithm. */
export function logAxis(low: number, high: number, count: number): Float64Array {
  if (!(low > 0 && high >= low && high < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`an axis must rise from above zero, got ${low} to ${high}`)
  }
  if (!(Number.isInteger(count) && count >= 2))
    throw new RangeError(`an axis must have two places or more, got ${count}`)
  const ratio = Math.log(high / low)
  return Float64Array.from({ length: count }, (_, i) =>
    i === count - 1 ? high : low * Math.exp((ratio * i) / (count - 1)),
  )
}

/** The window of a question over both axes. Throws RangeError for places that are not above zero. */
export function planWindow(basis: PlanBasis, axes: WindowAxes): PlanWindow {
  const bySpeed = speedLine(axes.speeds, basis)
  const byForce = forceLine(axes.forces, basis)
  const model = frictionModel(basis.question, basis.contact)
  const cells = axes.speeds.length * axes.forces.length
  const window = {
    ...axes,
    byForce,
    broken: new Uint16Array(cells),
    friction: new Float64Array(cells),
    frictionLow: new Float64Array(cells),
    frictionHigh: new Float64Array(cells),
    lambda: model.film === null ? null : new Float64Array(cells),
    uncertainty: new Float64Array(cells),
  }
  fillFriction(window, model)
  judgeCells(window, bySpeed, basis)
  return window
}

/** Friction by the film model over the plane; `frictionAt` says the same of one place. */
function fillFriction(window: PlanWindow, { expected, film }: FrictionModel): void {
  const { boundary, boundarySpread, filmSpread } = expected
  const { friction, frictionLow, frictionHigh, lambda } = window
  if (film === null || lambda === null) {
    friction.fill(boundary)
    frictionLow.fill(boundary / boundarySpread)
    frictionHigh.fill(boundary * boundarySpread)
    return
  }
  const lnSpeeds = window.speeds.map((speed) => Math.log(entrainmentInPureSliding(speed)))
  const thinned =
    film.thinning === null
      ? undefined
      : thinnedPlane(
          film.thinning,
          lnSpeeds,
          window.byForce.load.map((load) => Math.log(load)),
        )
  const full = film.soft ? softPlane(film, window, thinned?.sliding) : undefined
  const scale = 1 / film.roughness
  const perMiddle = 1 / film.middle ** 2
  const wide = film.spread ** 2
  const low = boundary / boundarySpread
  const high = boundary * boundarySpread
  for (let j = 0, k = 0; j < window.forces.length; j++) {
    const lnLoad = Math.log(window.byForce.load[j])
    for (let i = 0; i < lnSpeeds.length; i++, k++) {
      const drawn = thinned === undefined ? lnSpeeds[i] : lnSpeeds[i] + thinned.inlet[k]
      const ratio = scale * Math.exp(lnMinimumFilm(film.law, drawn, lnLoad))
      const shear = full === undefined ? expected.film : full[k]
      const square = ratio * ratio * perMiddle
      const touching = 1 / (1 + square)
      const least = 1 / (1 + square * wide)
      const most = wide / (wide + square)
      const thin = shear / filmSpread
      const thick = shear * filmSpread
      lambda[k] = ratio
      friction[k] = shear + (boundary - shear) * touching
      frictionLow[k] = thin + (low - thin) * (low > thin ? least : most)
      frictionHigh[k] = thick + (high - thick) * (high > thick ? most : least)
    }
  }
}

/**
 * Film friction of soft bodies: each term is a product of a power of the speed and one of the load, and where the liquid thins of
 * one of the viscosity, whose logarithms `lnViscosity` are.
 */
function softPlane(
  film: FilmModel,
  { speeds, forces, byForce }: PlanWindow,
  lnViscosity: Float64Array | undefined,
): Float64Array {
  const plane = new Float64Array(speeds.length * forces.length)
  const viscosity = lnViscosity === undefined ? film.pair.viscosity : 1
  const unit = filmNumbers({ ...film.pair, viscosity, entrainmentSpeed: 1, load: 1 })
  for (const { factor, speedPower, loadPower } of softShearTerms) {
    const bySpeed = speeds.map((speed) => (unit.speed * entrainmentInPureSliding(speed)) ** speedPower)
    for (let j = 0, k = 0; j < forces.length; j++) {
      const byLoad = pureSlidingRatio * factor * (unit.load * byForce.load[j]) ** loadPower
      for (let i = 0; i < speeds.length; i++, k++) {
        const thinner = lnViscosity === undefined ? 1 : Math.exp(speedPower * lnViscosity[k])
        plane[k] += byLoad * bySpeed[i] * thinner
      }
    }
  }
  return plane
}

/** Uncertainty of each cell as `pointUncertainty` has it, and the limits that it breaks. */
function judgeCells(window: PlanWindow, line: SpeedLine, { question, geometry, noise }: PlanBasis): void {
  const { rig, ask } = question
  const { floor = 0, ceiling = Number.POSITIVE_INFINITY } = rig.torque
  const scales =
    (rig.torque.scaleAccuracy ** 2 + rig.axialForce.scaleAccuracy ** 2) / 3 + geometry.leverLoadUncertainty ** 2
  const wanted = ask.uncertainty
  const least = Math.max(floor, noise.torqueZero / wanted)
  const bits = {
    floor: bitOf('torqueFloor'),
    ceiling: bitOf('torqueCeiling'),
    turns: bitOf('turns'),
    wear: bitOf('wear'),
    uncertainty: bitOf('uncertainty'),
  }
  const { broken, friction, frictionLow, frictionHigh, uncertainty, byForce, forces } = window
  const fromTilt = line.tilt.map((tilt) => tilt ** 2 / 3)
  const perReading = line.readings.map((readings) => 1 / readings)
  const tooUnsure = wanted ** 2
  for (let j = 0, k = 0; j < forces.length; j++) {
    const perFriction = byForce.perFriction[j]
    const noisyForce = (noise.axialForce / forces[j]) ** 2
    const noisyTorque = (noise.torque / perFriction) ** 2
    const zero = (noise.torqueZero / perFriction) ** 2
    const common = scales + (noise.forceZero / forces[j]) ** 2
    const worn = byForce.wearDistance[j]
    const leastFriction = least / perFriction
    const mostFriction = ceiling / perFriction
    for (let i = 0; i < line.mask.length; i++, k++) {
      const value = friction[k]
      const share = perReading[i]
      const total = common + noisyForce * share + (noisyTorque * share + zero + fromTilt[i]) / (value * value)
      let mask = line.mask[i] | byForce.mask[j]
      if (frictionLow[k] < leastFriction) mask |= bits.floor
      if (frictionHigh[k] > mostFriction) mask |= bits.ceiling
      if (line.tilt[i] > wanted * value) mask |= bits.turns
      if (line.distance[i] > worn) mask |= bits.wear
      if (total > tooUnsure) mask |= bits.uncertainty
      uncertainty[k] = Math.sqrt(total)
      broken[k] = mask
    }
  }
}

/** Share of the cells, in the logarithm of speed, that can be measured at force `j`: 0 to 1. */
export function measurableShare({ speeds, broken }: PlanWindow, j: number): Ratio {
  let free = 0
  for (let i = 0; i < speeds.length; i++) if (broken[j * speeds.length + i] === 0) free++
  return free / speeds.length
}

/** The widest run of neighbouring speeds that can be measured at force `j`; null where there is none. */
export function measurableRun(
  { speeds, broken }: PlanWindow,
  j: number,
): { readonly slowest: MetrePerSecond; readonly fastest: MetrePerSecond; readonly count: number } | null {
  let best = { from: 0, count: 0 }
  let from = 0
  for (let i = 0; i <= speeds.length; i++) {
    if (i < speeds.length && broken[j * speeds.length + i] === 0) continue
    if (i - from > best.count) best = { from, count: i - from }
    from = i + 1
  }
  if (best.count === 0) return null
  return { slowest: speeds[best.from], fastest: speeds[best.from + best.count - 1], count: best.count }
}
