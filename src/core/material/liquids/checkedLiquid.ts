import {
  done,
  type Explained,
  failed,
  type Kelvin,
  type Outcome,
  type Pascal,
  type Problem,
} from '../../terms/index.ts'
import { materialProblem } from '../materialProblem.ts'
import { type Span, within } from '../span.ts'
import { temperatureInWords } from './kelvin.ts'
import type { Liquid, LiquidConditions, LiquidViscosity } from './liquid.ts'

/** A liquid whose laws need not look at their limits: `checkedLiquid` does. */
export interface LiquidParts extends Omit<Liquid, 'viscosity' | 'density'> {
  /** Beyond `shearRate` the value is given with a doubt instead of refused. */
  readonly ratesBeyond?: boolean
  /** Called inside the limits only; the rate is 0 where it was left out and does not matter. */
  readonly viscosityAt: (state: CheckedState) => LiquidViscosity
  /** Density in kg/m³, or why there is none. */
  readonly densityAt: ((temperature: Kelvin) => Explained & { readonly density: number }) | null
}

/** Conditions that were found inside the limits. */
export interface CheckedState {
  readonly temperature: Kelvin
  readonly shearRate: number
  readonly pressure: Pascal
}

/** A liquid that refuses what lies outside its table; NaN lies outside every table. */
export const checkedLiquid = ({ viscosityAt, densityAt, ratesBeyond = false, ...liquid }: LiquidParts): Liquid => ({
  ...liquid,
  viscosity: (temperature, conditions = {}): Outcome<LiquidViscosity> => {
    const problems = [
      ...outsideTemperature(liquid, temperature),
      ...outsideRate(liquid, conditions, ratesBeyond),
      ...outsidePressure(liquid, conditions),
    ]
    if (problems.length > 0) return failed(...problems)
    return done(viscosityAt({ temperature, shearRate: conditions.shearRate ?? 0, pressure: conditions.pressure ?? 0 }))
  },
  density: (temperature) => {
    const problems = outsideTemperature(liquid, temperature)
    if (problems.length > 0) return failed(...problems)
    if (densityAt !== null) return done(densityAt(temperature))
    const what = `The density of ${liquid.name} is not known.`
    return failed(materialProblem('liquidRecipeImpossible', 'density', { what, mend: 'Give it with the liquid.' }))
  },
})

type Limits = Pick<Liquid, 'name' | 'temperature' | 'pressure' | 'shearRate'>

function outsideTemperature({ name, temperature: span }: Limits, temperature: Kelvin): readonly Problem[] {
  if (within(temperature, span)) return []
  const range = `${temperatureInWords(span.low)} to ${temperatureInWords(span.high)}`
  return [
    materialProblem('temperatureOutsideTable', 'temperature', {
      what: `${name} is known from ${range}, not at ${temperatureInWords(temperature)}.`,
      mend: `Take a temperature from ${range}, or give measured viscosities of your own.`,
    }),
  ]
}

function outsideRate(
  { name, shearRate: span }: Limits,
  { shearRate }: LiquidConditions,
  beyond: boolean,
): readonly Problem[] {
  if (shearRate === undefined) {
    if (span === null) return []
    const what = `The viscosity of ${name} depends on the shear rate, and none was given.`
    return [materialProblem('shearRateMissing', 'shearRate', { what, mend: `Give a shear rate from ${rates(span)}.` })]
  }
  const allowed = span === null || beyond ? { low: span === null ? 0 : Number.MIN_VALUE, high: Number.MAX_VALUE } : span
  if (within(shearRate, allowed)) return []
  const range = span === null ? '0 1/s and more' : rates(span)
  return [
    materialProblem('shearRateOutsideTable', 'shearRate', {
      what: `${name} is known for shear rates of ${range}, not at ${shearRate} 1/s.`,
      mend: 'Take a shear rate inside, or measure the flow curve further.',
    }),
  ]
}

function outsidePressure({ name, pressure: span }: Limits, { pressure = 0 }: LiquidConditions): readonly Problem[] {
  if (within(pressure, span)) return []
  const range =
    span.high === 0 ? 'the pressure of the air only' : `${span.low} to ${span.high} Pa above that of the air`
  return [
    materialProblem('pressureOutsideTable', 'pressure', {
      what: `${name} is known at ${range}, not at ${pressure} Pa above it.`,
      mend: span.high === 0 ? 'Give its pressure–viscosity coefficient.' : 'Take a pressure inside.',
    }),
  ]
}

const rates = ({ low, high }: Span): string => `${low} to ${high} 1/s`
