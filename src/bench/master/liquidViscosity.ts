import { findLiquid, fitFlowLaws, flowFunction, liquidFrom } from '../../core/material/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import {
  done,
  failed,
  type Kelvin,
  type LiquidSpec,
  type Metre,
  type MetrePerSecond,
  type Outcome,
  type PascalSecond,
  type Problem,
} from '../../core/terms/index.ts'

/** The viscosity that a liquid had in a record. */
export interface ViscosityInRecord {
  /** By the sliding speed: a thinning liquid is sheared by speed over gap. */
  readonly at: (speed: MetrePerSecond) => PascalSecond
  /** Relative standard uncertainty; 0 where nobody states one. */
  readonly uncertainty: number
  /** Where it comes from, one sentence. */
  readonly sentence: string
}

/**
 * Viscosity of a liquid at the temperature of its record and, for a flow curve, at the rate of the contact (speed over `shearGap`; the
 * end of the curve at the fastest rate where no gap is given).
 */
export function liquidViscosity(
  liquid: LiquidSpec | undefined,
  { temperature, shearGap, file }: { temperature: Kelvin | null; shearGap: Metre | undefined; file: string },
): Outcome<ViscosityInRecord> {
  if (liquid === undefined) return failed(noLiquid(file))
  if (liquid.byRate !== undefined) return byRate(liquid, shearGap, file)
  const { name, viscosity, viscosityUncertainty = 0, byTemperature } = liquid
  if (byTemperature !== undefined) return byTemperatures(liquid, temperature, file)
  if (viscosity !== undefined) {
    const sentence = `${name}: ${eta(viscosity)} as the setup says.`
    return done({ at: () => viscosity, uncertainty: viscosityUncertainty / viscosity, sentence })
  }
  const found = findLiquid(name)
  if (!found.ok) return failed(noViscosity(name, file))
  if (temperature === null) return failed(noTemperature(name, file))
  const known = found.value.viscosity(temperature)
  if (!known.ok) return failed(...known.problems.map((problem) => ({ ...problem, place: { file } })))
  const value = known.value.viscosity
  return done({
    at: () => value,
    uncertainty: (known.value.viscosityUncertainty ?? 0) / value,
    sentence: `${found.value.name}: ${eta(value)} at ${warm(temperature)} (${known.value.source}).`,
  })
}

const eta = (value: PascalSecond): string => printQuantity(value, 'viscosity', { digits: 3 })
const warm = (value: Kelvin): string => printQuantity(value, 'temperature', { digits: 4 })

function byTemperatures(liquid: LiquidSpec, temperature: Kelvin | null, file: string): Outcome<ViscosityInRecord> {
  const { name, byTemperature = [], viscosity, viscosityUncertainty = 0 } = liquid
  if (temperature === null) return failed(noTemperature(name, file))
  const points = byTemperature.map(({ viscosity: value, at }) => ({ temperature: at, viscosity: value }))
  const made = liquidFrom({
    kind: 'measured',
    name,
    source: 'setup',
    points: points.sort((a, b) => a.temperature - b.temperature),
  })
  const known = made.ok ? made.value.viscosity(temperature) : made
  if (!known.ok) return failed(...known.problems.map((problem) => ({ ...problem, place: { file } })))
  const value = known.value.viscosity
  return done({
    at: () => value,
    uncertainty: viscosity === undefined ? 0 : viscosityUncertainty / viscosity,
    sentence: `${name}: ${eta(value)} at ${warm(temperature)}, from ${points.length} measured temperatures.`,
  })
}

function byRate(liquid: LiquidSpec, shearGap: Metre | undefined, file: string): Outcome<ViscosityInRecord> {
  const { name, byRate: curve = [], viscosity, viscosityUncertainty = 0 } = liquid
  const fits = fitFlowLaws(curve.map(({ viscosity: value, at }) => ({ shearRate: at, viscosity: value })))
  if (!fits.ok)
    return failed(...fits.problems.map((problem) => ({ ...problem, place: { file, name: 'liquid.byRate' } })))
  const [best] = fits.value
  const law = flowFunction(best.law, best.parameters)
  const { low, high } = best.shearRate
  // Beyond the measured rates a law is a guess: the ends are held.
  const at = (speed: MetrePerSecond): PascalSecond =>
    law(shearGap === undefined ? high : Math.min(high, Math.max(low, speed / shearGap)))
  const how =
    shearGap === undefined
      ? `its value at the fastest rate measured, ${printQuantity(high, 'frequency', { unit: '1/s', digits: 3 })}`
      : `at speed over ${printQuantity(shearGap, 'length')}, held at the ends of the curve`
  return done({
    at,
    uncertainty: viscosity === undefined ? (best.scatter ?? 0) : viscosityUncertainty / viscosity,
    sentence: `${name}: flow curve (${best.law}), ${how}.`,
  })
}

const problem = (file: string, what: string, mend: string): Problem => ({
  kind: 'viscosityMissing',
  class: 'badInput',
  place: { file },
  what,
  mend,
})

const noLiquid = (file: string): Problem =>
  problem(
    file,
    'The setup names no liquid, and a master curve needs its viscosity.',
    'Add "liquid:" with a name and a viscosity.',
  )

const noViscosity = (name: string, file: string): Problem =>
  problem(
    file,
    `The viscosity of ${name} is not known.`,
    'Add "viscosity", "byTemperature" or "byRate" under "liquid:".',
  )

const noTemperature = (name: string, file: string): Problem =>
  problem(
    file,
    `The viscosity of ${name} depends on the temperature, and none is known.`,
    'Add "temperature: 25 °C" under "run:".',
  )
