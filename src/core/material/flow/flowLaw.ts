import type { PascalSecond } from '../../terms/index.ts'
import { mustNotBeNegative } from '../refuse.ts'
import { carreauYasuda } from './carreauYasuda.ts'
import { cross } from './cross.ts'
import { herschelBulkley } from './herschelBulkley.ts'
import { newtonian } from './newtonian.ts'
import { powerLaw } from './powerLaw.ts'
import type { FlowLaw, FlowLawName } from './shape.ts'

/** All flow laws by name, simplest first. */
export const flowLaws: Readonly<Record<FlowLawName, FlowLaw>> = {
  newtonian,
  powerLaw,
  herschelBulkley,
  cross,
  carreauYasuda,
}

/** Parameters of a law by their names, SI. */
export type FlowParameters = Readonly<Record<string, number>>

/**
 * Viscosity (Pa·s) as a function of shear rate (1/s), its parameters checked once: for inner loops. Throws RangeError for a
 * missing or impossible parameter; the function throws for a negative rate, and at rest where the law is infinite there
 * (power law, Herschel–Bulkley).
 */
export function flowFunction(name: FlowLawName, parameters: FlowParameters): (shearRate: number) => PascalSecond {
  const law = flowLaws[name]
  const fault = flowParameterFaults(name, parameters)[0]
  if (fault !== undefined) throw new RangeError(`${name}: ${fault}`)
  const values = law.parameters.map(({ name }) => parameters[name])
  return (shearRate) => {
    mustNotBeNegative(shearRate, 'shear rate', '1/s')
    const viscosity = law.viscosity(values, shearRate)
    if (!(viscosity >= 0 && viscosity < Number.POSITIVE_INFINITY)) {
      throw new RangeError(`${name} has no viscosity at a shear rate of ${shearRate} 1/s`)
    }
    return viscosity
  }
}

/** Viscosity (Pa·s) of a law at one shear rate (1/s); refuses as `flowFunction` does. */
export const flowViscosity = (name: FlowLawName, parameters: FlowParameters, shearRate: number): PascalSecond =>
  flowFunction(name, parameters)(shearRate)

/** What is missing or impossible about the parameters of a law, one sentence each; empty when it can be used. */
export function flowParameterFaults(name: FlowLawName, parameters: FlowParameters): readonly string[] {
  const law = flowLaws[name]
  const faults = law.parameters
    .filter(({ name, least }) => !(parameters[name] >= least && parameters[name] < Number.POSITIVE_INFINITY))
    .map(({ name, least, unit }) => `${name} must be ${least} ${unit} or more and finite, got ${parameters[name]}`)
  const known = new Set(law.parameters.map(({ name }) => name))
  const strange = Object.keys(parameters)
    .filter((key) => !known.has(key))
    .map((key) => `${key} is none of its parameters ${[...known].join(', ')}`)
  return [...faults, ...strange]
}
