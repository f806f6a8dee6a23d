import { mustBePositive } from '../contact/index.ts'
import { findRoot } from '../numeric/index.ts'
import { doubtAbove, doubtsFound, type Explained, type Metre, type PascalSecond } from '../terms/index.ts'
import type { FilmConditions } from './conditions.ts'
import { explainFilm, type Film } from './explainFilm.ts'
import { minimumFilm } from './filmThickness.ts'

/** Viscosity of a liquid at a shear rate in 1/s. */
export type FlowCurve = (shearRate: number) => PascalSecond

/** Which speed shears the inlet: the liquid drawn in, u/h, or all of the sliding, v/h = 2u/h. */
export type InletRate = 'entrainment' | 'sliding'

/** A film whose viscosity is that at its own inlet. */
export interface ThinningFilm extends Explained {
  /** As of a liquid with the constant viscosity below; its doubts stand among those here. */
  readonly film: Film
  readonly viscosity: PascalSecond
  /** 1/s */
  readonly shearRate: number
  /** The same with the other of the two rates. */
  readonly byOtherRate: { readonly rate: InletRate; readonly minimum: Metre; readonly viscosity: PascalSecond }
  readonly end: 'converged' | 'stepLimit'
}

/**
 * Film of a liquid whose viscosity falls (or rises) with shear rate: the thickness h at which the law of a constant viscosity gives
 * back h with η(u/h). `conditions.viscosity` is not looked at. In elastic regimes the answer is the only one; between rigid
 * bodies a liquid that thins more than as γ^−½ may have several, and one of them is given.
 */
export function filmWithThinning(
  conditions: Omit<FilmConditions, 'viscosity'>,
  flowCurve: FlowCurve,
  rate: InletRate = 'entrainment',
): ThinningFilm {
  mustBePositive(conditions.entrainmentSpeed, 'entrainment speed', 'm/s')
  const other = rate === 'entrainment' ? 'sliding' : 'entrainment'
  const answer = solve(conditions, flowCurve, rate)
  const beside = solve(conditions, flowCurve, other)
  const film = explainFilm({ ...conditions, viscosity: answer.viscosity })
  return {
    film,
    viscosity: answer.viscosity,
    shearRate: answer.shearRate,
    end: answer.end,
    byOtherRate: { rate: other, minimum: beside.minimum, viscosity: beside.viscosity },
    law: `Hamrock & Dowson with the viscosity at the inlet’s shear rate, ${rate === 'entrainment' ? 'u/h' : 'v/h'}`,
    source: 'films as `explainFilm`; one rate for the whole inlet is common practice, no source',
    valid:
      'One shear rate stands for an inlet in which it varies; a liquid with normal stresses or a yield stress, or one that ' +
      'separates, makes another film.',
    doubts: doubtsFound(
      ...film.doubts,
      doubtAbove({
        kind: 'rateUnclear',
        seen: Math.abs(beside.minimum / answer.minimum - 1),
        limit: 0.1,
        say: (seen) => `Taking the other shear rate changes the film by ${seen} of itself: both are given.`,
      }),
    ),
  }
}

interface Solved {
  readonly minimum: Metre
  readonly viscosity: PascalSecond
  readonly shearRate: number
  readonly end: 'converged' | 'stepLimit'
}

function solve(conditions: Omit<FilmConditions, 'viscosity'>, flowCurve: FlowCurve, rate: InletRate): Solved {
  const speed = (rate === 'entrainment' ? 1 : 2) * conditions.entrainmentSpeed
  const viscosityAt = (lnFilm: number): PascalSecond => {
    const viscosity = flowCurve(speed / Math.exp(lnFilm))
    mustBePositive(viscosity, `viscosity at ${speed / Math.exp(lnFilm)} 1/s`, 'Pa·s')
    return viscosity
  }
  const over = (lnFilm: number): number =>
    Math.log(minimumFilm({ ...conditions, viscosity: viscosityAt(lnFilm) })) - lnFilm
  const start = Math.log(conditions.radius) - 12
  const [low, high] = bracket(over, start)
  const { at, end } = findRoot(over, [low, high], { tolerance: 1e-12 })
  return { minimum: Math.exp(at), viscosity: viscosityAt(at), shearRate: speed / Math.exp(at), end }
}

/** Steps away from the start until the law gives less than what was put in, or more: a thinner film is always too thin. */
function bracket(over: (lnFilm: number) => number, start: number): readonly [number, number] {
  const up = over(start) > 0
  let near = start
  for (let reach = 1; reach <= 64; reach *= 2) {
    const far = up ? start + reach : start - reach
    if (over(far) > 0 !== up) return up ? [near, far] : [far, near]
    near = far
  }
  throw new RangeError('flow curve must let some film carry the load, none was found')
}
