import type { CurveModelName } from '../terms/index.ts'
import type { FrictionLaw } from './frictionLaw.ts'

/**
 * Names of the parameters of each member, as a fitted curve names them; speeds in m/s, levels in µ at 1 m/s where the
 * level has an exponent.
 */
export const familyParameters: Readonly<Record<CurveModelName, readonly string[]>> = {
  plateau: ['h'],
  powerLaw: ['k', 'n'],
  stribeck: ['k', 'n', 'h', 'x0', 'm'],
  stribeckSloped: ['k', 'n', 'h', 'x0', 'm', 'l'],
  stribeckExponential: ['c', 'h', 'k', 'x0'],
}

type Parameters = Readonly<Record<string, number>>

/**
 * True friction by a member of the curve family. Written down here once more, in plain formulas, so that what the rig
 * makes does not lean on the code that is fitted to it.
 */
const formulas: Readonly<Record<CurveModelName, (p: Parameters, v: number) => number>> = {
  plateau: ({ h }) => h,
  powerLaw: ({ k, n }, v) => k * v ** n,
  stribeck: (p, v) => mixed(p.h, p.k * v ** p.n, (v / p.x0) ** p.m),
  stribeckSloped: (p, v) => mixed(p.h * v ** p.l, p.k * v ** p.n, (v / p.x0) ** p.m),
  stribeckExponential: ({ c, h, k, x0 }, v) => c + (h - c) * Math.exp(-v / x0) + k * v,
}

const mixed = (boundary: number, film: number, odds: number): number => film + (boundary - film) / (1 + odds)

/** Throws RangeError for a parameter that is missing or no finite number. */
export function familyLaw(model: CurveModelName, parameters: Parameters): FrictionLaw {
  for (const name of familyParameters[model]) {
    if (!Number.isFinite(parameters[name])) {
      throw new RangeError(`${model} needs the parameter ${name}, got ${parameters[name]}`)
    }
  }
  const formula = formulas[model]
  return { model, parameters, at: (speed) => formula(parameters, speed) }
}
