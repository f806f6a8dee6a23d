import { entrainmentInPureSliding, filmNumbers, softFilmFriction } from '../film/index.ts'
import type { Metre } from '../terms/index.ts'
import type { JudgedContact } from './contactJudged.ts'
import { contactReckonings } from './contactReckonings.ts'
import type { FlashAtFastest } from './flashAtFastest.ts'
import type { LayerBeside } from './layerBeside.ts'
import type { PlannedPoint } from './plannedPoints.ts'
import { frictionModel } from './predictedFriction.ts'
import { type Reckoning, reckoned } from './reckoning.ts'
import type { RegimeAnswer } from './regimeAnswer.ts'
import { partialTurnBias } from './turnBudget.ts'
import { wearReckonings } from './wearReckonings.ts'
import type { PlanBasis } from './windowAxes.ts'

/** What a plan has worked out so far. */
export interface PlanParts {
  readonly contact: JudgedContact
  readonly layer: LayerBeside | null
  readonly flash: FlashAtFastest | null
  readonly points: readonly PlannedPoint[]
  readonly regime: RegimeAnswer
  /** Slid by one record. */
  readonly distance: Metre
}

/** How each kind of number in a plan is reckoned, by which law, where that law holds and what speaks against it here. */
export const reckonings = (basis: PlanBasis, parts: PlanParts): readonly Reckoning[] => [
  ...contactReckonings(basis, parts),
  ...wearReckonings(basis, parts.contact, parts.distance),
  ...(parts.flash === null ? [] : [flash(parts.flash)]),
  ...filmReckonings(basis, parts),
  partialTurns(basis, parts.points),
  uncertainty(parts.points),
  replicates(basis),
]

const flash = ({ sentence, law, source, valid, doubts }: FlashAtFastest): Reckoning => ({
  name: 'flash',
  ...{ sentence, law, source, valid },
  doubts: doubts.map((doubt) => doubt.sentence),
})

function filmReckonings(basis: PlanBasis, { regime, contact, points }: PlanParts): readonly Reckoning[] {
  const { film } = frictionModel(basis.question, basis.contact)
  if (regime.film === null || film === null) return []
  const { law, source, valid, doubts } = regime.film
  const sentence = regime.sentences.find((one) => one.startsWith('Film at ')) ?? 'A film is predicted.'
  const own: Reckoning = { name: 'film', sentence, law, source, valid, doubts: doubts.map((doubt) => doubt.sentence) }
  const mixed: Reckoning = {
    name: 'mixedFriction',
    sentence:
      'Between boundary and film the share of boundary friction is taken as 1/(1 + (λ/λ₀)²), λ₀ the geometric middle of the bounds.',
    law: 'a blend of ours, for planning only',
    source: 'none: nobody can predict a mixed regime',
    valid: 'To see limits early. The band spans the expected spread of both ends and of λ.',
    doubts: ['Measure; do not report a predicted curve as a result.'],
  }
  if (!film.soft) return [own, mixed]
  const sorted = [...points].sort((a, b) => a.slidingSpeed - b.slidingSpeed)
  const middle = sorted[sorted.length >> 1]
  const entrainmentSpeed = entrainmentInPureSliding(middle.slidingSpeed)
  const viscosity = middle.friction.inlet?.viscosity ?? film.pair.viscosity
  const soft = softFilmFriction(filmNumbers({ ...film.pair, viscosity, entrainmentSpeed, load: contact.load }))
  const [standing, moving] = [soft.standingSide, soft.movingSide].map((one) => Number(one.toPrecision(2)))
  return [
    own,
    reckoned(
      'filmFriction',
      `A full film alone would give ${standing} to ${moving} in the middle of the sweep, by the side that the rig reads.`,
      soft,
    ),
    mixed,
  ]
}

function partialTurns({ noise }: PlanBasis, points: readonly PlannedPoint[]): Reckoning {
  const short = points.filter(({ turns }) => turns < 0.995)
  const worst = Math.max(0, ...short.map(({ turns }) => partialTurnBias(turns))) * Math.tan(noise.tilt)
  const degrees = Number(((noise.tilt * 180) / Math.PI).toPrecision(2))
  return {
    name: 'partialTurns',
    sentence:
      short.length === 0
        ? 'Every step covers whole turns or more: a tilt of the plate averages out.'
        : `${short.length} steps cover less than a turn: a plate tilted by ${degrees}° could shift friction by up to ${Number(worst.toPrecision(2))}.`,
    law: 'bias of a mean over N turns, |sin πN|/(πN) · tan β',
    source: 'mean of a sine; a tilt β adds tan β once a turn (Burris & Sawyer 2009, Tribol. Lett., for the tilt)',
    valid: 'One ripple a turn. A bent plate has more of them, a loose one jumps.',
    doubts:
      noise.tilt > 0 && short.length > 0
        ? ['Nobody knows the tilt before the mounting: the sheet asks for the ripple of a slow turn.']
        : [],
  }
}

function uncertainty(points: readonly PlannedPoint[]): Reckoning {
  const totals = points.map((point) => point.uncertainty.total)
  const [low, high] = [Math.min(...totals), Math.max(...totals)].map((one) => Number((100 * one).toPrecision(2)))
  return {
    name: 'uncertainty',
    sentence: `Standard uncertainty of a point ${low} to ${high} % of friction.`,
    law: 'root of the sum of squares: noise over its independent readings, zeroes, scales, lever and tilt',
    source: 'JCGM 100:2008, 5.1.2; scale errors as rectangular, 4.3.7',
    valid:
      'Noise as seen or assumed, steady steps. It holds for one mounting; between mountings the scatter is far larger.',
    doubts: ['The scatter between replicates, not this number, decides whether samples differ.'],
  }
}

function replicates({ question: { deciding } }: PlanBasis): Reckoning {
  return {
    name: 'replicates',
    sentence: `Replicates for a difference of ${Number((100 * deciding.difference).toPrecision(2))} % at a scatter of ${Number((100 * deciding.repeatability).toPrecision(2))} %.`,
    law: 'two-sample t test, power by the noncentral t; equivalence by two one-sided tests',
    source: 'Cohen 1988; Schuirmann 1987 (from memory)',
    valid: 'Scatter alike in both samples and about normal, replicates independent: fresh mountings in random order.',
    doubts: deciding.repeatabilityFrom === 'assumed' ? ['The scatter is assumed. Measure it, then plan again.'] : [],
  }
}
