// Long because it holds the answers of one station: each a formula with its values, source and validity.
import type { Plan } from '../../../core/plan/index.ts'
import { type Dimension, printQuantity } from '../../../core/quantity/index.ts'
import type { OrderedSheet } from '../../../core/terms/index.ts'
import type { Why, WhyValue } from '../../sentence/why.ts'
import type { LivePlan } from './livePlan.ts'

const say = (value: number, dimension: Dimension, digits = 3): string => printQuantity(value, dimension, { digits })
const of = (sign: string, words: string, value: string): WhyValue => ({ sign, words, value })

/** Load on one contact. */
export function whyLoad({ basis, suggestion, contact }: LivePlan): Why {
  const { loadFactor, contacts } = basis.geometry
  return {
    key: 'load',
    what: 'normal load on one contact',
    formula: 'W = c·F / n',
    values: [
      of('F', 'axial force', say(suggestion.axialForce, 'force')),
      of('c', 'normal forces of all contacts per axial force', say(loadFactor, 'ratio', 4).replace('100 %', '1')),
      of('n', 'contacts that share it', String(contacts)),
      of('W', 'load on each', say(contact.load, 'force')),
    ],
    source: 'Balance of forces on the fixture.',
    validity: 'bodies that share the load evenly; a stiff coupling on a tilted plate does not let them.',
    changes: 'the axial force, the number of bodies, the inclination of the plates.',
    word: 'load',
  }
}

/** Peak or mean pressure. */
export function whyPressure({ basis, contact }: LivePlan): Why {
  const { contact: law, geometry, question } = basis
  const common = { key: 'pressure', word: 'pressure', source: `${contact.law}; ${contact.source}.` }
  if (law.kind !== 'point') {
    return {
      ...common,
      what: 'mean pressure under the face',
      formula: 'p = c·F / A',
      values: [
        of('A', 'area of all faces', `${((geometry.nominalArea ?? 0) * 1e6).toPrecision(3)} mm²`),
        of('p', 'mean pressure', say(contact.meanPressure ?? 0, 'pressure')),
      ],
      validity: 'a mean only: edges and tilt make more.',
      changes: 'the axial force and the size of the face.',
    }
  }
  return {
    ...common,
    what: 'peak pressure in one contact',
    formula: 'p₀ = (6 W E*² / π³ R²)^⅓',
    values: [
      of('W', 'load on the contact', say(contact.load, 'force')),
      of('R', 'effective radius', say(law.radius, 'length')),
      of(
        'E*',
        `contact modulus of ${question.pair.upper.name} on ${question.pair.lower.name}`,
        say(law.modulus, 'pressure'),
      ),
      of('p₀', 'peak pressure', say(contact.peakPressure ?? 0, 'pressure')),
    ],
    validity: contact.hertz,
    changes: 'the load (cube root), the ball (power −2/3), the softer body (power 2/3).',
  }
}

/** Width of the contact. */
export function whyContact({ basis, contact }: LivePlan): Why {
  const law = basis.contact
  return {
    key: 'contact',
    what: 'diameter of one contact',
    formula: '2a = 2 (3 W R / 4 E*)^⅓',
    values: [
      of('W', 'load on the contact', say(contact.load, 'force')),
      of('R', 'effective radius', say(law.kind === 'point' ? law.radius : 0, 'length')),
      of('E*', 'contact modulus', say(law.kind === 'point' ? law.modulus : 0, 'pressure')),
      of('2a', 'diameter', say(2 * (contact.contactRadius ?? 0), 'length')),
    ],
    source: `${contact.law}; ${contact.source}.`,
    validity: contact.hertz,
    changes: 'the load and the radius (cube root of each), the softer body.',
    word: 'contact',
  }
}

/** How deep the contact sinks. */
export function whyDepth({ basis, contact }: LivePlan): Why {
  const law = basis.contact
  const thickness = basis.question.pair.lower.thickness
  return {
    key: 'depth',
    what: 'approach of the bodies under load',
    formula: 'δ = a² / R',
    values: [
      of('a', 'radius of the contact', say(contact.contactRadius ?? 0, 'length')),
      of('R', 'effective radius', say(law.kind === 'point' ? law.radius : 0, 'length')),
      of('δ', 'approach', say(contact.approach ?? 0, 'length')),
      ...(thickness === undefined ? [] : [of('t', 'thickness of the coating', say(thickness, 'length'))]),
    ],
    source: `${contact.law}; ${contact.source}. That a tenth of a coating may be used: Bückle's rule.`,
    validity: contact.hertz,
    changes: 'the load (power 2/3), the ball, the thickness of the coating.',
    word: 'indentation',
  }
}

/** λ at one end of the sweep. */
export function whyLambda({ basis }: LivePlan, full: Plan | null, end: 'slowest' | 'fastest'): Why {
  const { pair, liquid } = basis.question
  const point = full?.points.find(({ slidingSpeed }) => slidingSpeed === full.suggestion[end])
  const lambda = point?.friction.lambda
  const film = full?.regime.film
  return {
    key: `lambda-${end}`,
    what: `film over roughness at the ${end} speed`,
    formula: 'λ = h / √(Rq₁² + Rq₂²)',
    values: [
      of('Rq₁', pair.upper.name, pair.upper.roughness === undefined ? 'not said' : say(pair.upper.roughness, 'length')),
      of('Rq₂', pair.lower.name, pair.lower.roughness === undefined ? 'not said' : say(pair.lower.roughness, 'length')),
      of(
        'η',
        liquid?.name ?? 'no liquid',
        liquid?.viscosity === undefined ? 'not said' : say(liquid.viscosity, 'viscosity'),
      ),
      ...(lambda === undefined || lambda === null
        ? []
        : [
            of(
              'λ',
              `between ${lambda.low.toPrecision(2)} and ${lambda.high.toPrecision(2)}`,
              lambda.value.toPrecision(2),
            ),
          ]),
    ],
    source: film === undefined || film === null ? 'No film law applies.' : `h by ${film.law}; ${film.source}.`,
    validity:
      film === undefined || film === null || film.doubts.length === 0
        ? 'smooth enough surfaces and a liquid that behaves as its number says.'
        : film.doubts.map(({ sentence }) => sentence).join(' '),
    changes: 'speed and viscosity (about power 2/3), roughness, hardly the load.',
    word: 'lambda',
  }
}

/** Time of a sweep. */
export function whyTime({ basis, points }: LivePlan): Why {
  const { ask } = basis.question
  const longest = points.filter(({ dwell }) => dwell >= ask.mostDwell * 0.999).length
  const shortest = points.filter(({ dwell }) => dwell <= ask.leastDwell * 1.001).length
  return {
    key: 'time',
    what: 'time of the sweep',
    formula: 'T = Σ min(t_most, max(t_least, N·2πr / v))',
    values: [
      of('N', 'turns of each step', String(Number(ask.turns.toPrecision(3)))),
      of('r', 'lever arm', say(basis.geometry.lever, 'length')),
      of('t_least', `shortest step, ${shortest} of them`, say(ask.leastDwell, 'time')),
      of('t_most', `longest step, ${longest} of them`, say(ask.mostDwell, 'time')),
      of('n', 'steps', String(points.length)),
    ],
    source: 'Sum over the planned steps.',
    validity: 'the drive reaches each speed at once; the sheet’s other parts are counted apart.',
    changes: 'the slowest speed above all, steps a decade, turns, up and down or one way.',
    word: 'turns',
  }
}

/** Distance that a record slides. */
export function whyDistance({ basis, points }: LivePlan): Why {
  const swept = points.reduce((sum, { distance }) => sum + distance, 0)
  const { conditioningDistance } = basis.question.ask
  return {
    key: 'distance',
    what: 'sliding distance of one record',
    formula: 's = s₀ + Σ v·t',
    values: [
      of('s₀', 'running in', say(conditioningDistance, 'length')),
      of('Σ', 'all steps', say(swept, 'length')),
      of('s', 'together', say(conditioningDistance + swept, 'length')),
    ],
    source: 'Sum over the planned steps.',
    validity: 'without the turns for aligning.',
    changes: 'the fastest speeds and their shortest step.',
    word: 'distance',
  }
}

/** Uncertainty of the points. */
export function whyUncertainty(live: LivePlan): Why {
  const points = [...live.points].sort((a, b) => a.uncertainty.total - b.uncertainty.total)
  const middle = points[points.length >> 1]
  const percent = (value: number): string => say(value, 'ratio', 2)
  const shared = Object.entries(middle?.uncertainty.shared ?? {})
    .sort(([, a], [, b]) => (b ?? 0) - (a ?? 0))
    .slice(0, 4)
    .map(([source, value]) => of(sharedSigns[source] ?? 'u', sharedNames[source] ?? source, percent(value ?? 0)))
  return {
    key: 'uncertainty',
    what: 'relative standard uncertainty of a point, median over the steps',
    formula: 'u = √(u_own² + Σ u_shared²)',
    values: [
      of('u_own', 'noise of the readings', percent(middle?.uncertainty.own ?? 0)),
      ...shared,
      of('u', 'together', percent(middle?.uncertainty.total ?? 0)),
    ],
    source: 'JCGM 100:2008 (law of propagation); rectangular scale errors over √3, 4.3.7.',
    validity: 'noise as said or assumed under “What is expected”.',
    changes: 'a larger load, longer steps, a better zero.',
    word: 'ownAndShared',
  }
}

const sharedNames: Readonly<Record<string, string>> = {
  torqueScale: 'scale of the torque',
  forceScale: 'scale of the axial force',
  forceZero: 'zero of the axial force',
  torqueBlank: 'zero of the torque after the blank',
  lever: 'lever arm',
  loadFactor: 'share of the load',
  tilt: 'tilt over a part of a turn',
}
const sharedSigns: Readonly<Record<string, string>> = {
  torqueScale: 'u_M',
  forceScale: 'u_F',
  forceZero: 'u_F0',
  torqueBlank: 'u_M0',
  lever: 'u_r',
  loadFactor: 'u_c',
  tilt: 'u_β',
}

/** Distance that one set of bodies bears. */
export function whyWear({ basis, contact }: LivePlan, full: Plan): Why {
  const { bears, ask } = basis.question
  const rate = (value: number | undefined): string =>
    value === undefined ? 'not said' : `${Number((value * 1e9).toPrecision(3))} mm³/(N·m)`
  return {
    key: 'wear',
    what: 'distance that one set of bodies bears',
    formula: 's = min(V_scar / (k₁·W), V_track / (k₂·n·W))',
    values: [
      of('k₁', 'wear rate of the upper body', rate(bears.upper.wearRate)),
      of('k₂', 'wear rate of the lower body', rate(bears.lower.wearRate)),
      of('W', 'load on one contact', say(contact.load, 'force')),
      of('2a', 'width allowed to the scar', say(2 * (contact.contactRadius ?? 0) * ask.scarShare, 'length')),
      ...(full.wear.distance === null ? [] : [of('s', 'distance', say(full.wear.distance, 'length', 2))]),
    ],
    source: 'Archard 1953: worn volume goes with load and distance.',
    validity: 'a wear rate is good to a factor of ten at best unless measured on this pair.',
    changes: 'the load, the wear rates, how wide a scar may grow.',
    word: 'wear',
  }
}

/** Time of one record, with all that belongs to it. */
export function whyRecordTime(sheet: OrderedSheet): Why {
  return {
    key: 'record',
    what: 'time of one record with all its parts',
    formula: 'sum over the run sheet',
    values: sheet.parts.map(({ heading, entries }, index) =>
      of(
        String(index + 1),
        heading,
        say(entries.reduce((sum, { duration }) => sum + duration, 0) / 60, 'count', 2).concat(' min'),
      ),
    ),
    source: 'The run sheet of this plan; times of mounting and cleaning are common practice, no source.',
    validity: 'a practised hand.',
    changes: 'the sweep; the rest hardly.',
    word: 'runSheet',
  }
}
