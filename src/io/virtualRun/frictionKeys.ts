import type { CurveModelName } from '../../core/terms/index.ts'
import type { QuantityKey, Section, Variants } from '../setup/keyKinds.ts'

const level = (about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension: 'ratio',
  range: { above: 0, most: 100 },
  required: true,
  example,
  about,
})

const exponent = (about: string, example: string): QuantityKey => ({
  is: 'quantity',
  dimension: 'ratio',
  range: { least: -3, most: 6 },
  required: true,
  example,
  about,
})

const transition: QuantityKey = {
  is: 'quantity',
  dimension: 'velocity',
  range: { above: 0, most: 100 },
  required: true,
  example: '8 mm/s',
  about: 'Sliding speed at which boundary and film share the friction alike.',
}

const law = (written: string, about: string, keys: Section['keys']): Section => ({
  is: 'section',
  required: true,
  about,
  keys: {
    kind: {
      is: 'choice',
      choices: [written],
      required: true,
      example: written,
      about: 'Which member of the curve family.',
    },
    ...keys,
  },
})

const mixedKeys: Section['keys'] = {
  boundary: level('Friction of the boundary branch; at 1 m/s if it has an exponent.', '0.22'),
  film: level('Friction that the film branch would have at 1 m/s.', '0.09'),
  filmExponent: exponent('Exponent of the film branch.', '0.35'),
  transition,
  sharpness: { ...exponent('How sharp the transition is.', '1.3'), range: { above: 0, most: 20 } },
}

/** The kinds of law as files write them, as the program calls them, and the parameter behind each key. */
export const lawsWritten: Readonly<
  Record<string, { model: CurveModelName; parameters: Readonly<Record<string, string>> }>
> = {
  plateau: { model: 'plateau', parameters: { h: 'boundary' } },
  'power law': { model: 'powerLaw', parameters: { k: 'film', n: 'filmExponent' } },
  Stribeck: {
    model: 'stribeck',
    parameters: { k: 'film', n: 'filmExponent', h: 'boundary', x0: 'transition', m: 'sharpness' },
  },
  'Stribeck, sloped': {
    model: 'stribeckSloped',
    parameters: {
      k: 'film',
      n: 'filmExponent',
      h: 'boundary',
      x0: 'transition',
      m: 'sharpness',
      l: 'boundaryExponent',
    },
  },
  'Stribeck, exponential': {
    model: 'stribeckExponential',
    parameters: { c: 'plateau', h: 'boundary', k: 'viscous', x0: 'transition' },
  },
}

/** True friction against sliding speed. */
export const frictionKeys: Variants = {
  is: 'variants',
  required: true,
  on: 'kind',
  about: 'The friction that truly acts, as a member of the curve family.',
  variants: {
    plateau: law('plateau', 'One level at all speeds.', { boundary: level('Friction.', '0.2') }),
    'power law': law('power law', 'One regime at all speeds.', {
      film: level('Friction at 1 m/s.', '0.1'),
      filmExponent: exponent('Exponent of the speed.', '0.3'),
    }),
    Stribeck: law('Stribeck', 'Boundary level, transition, film.', mixedKeys),
    'Stribeck, sloped': law('Stribeck, sloped', 'The same with a boundary branch that depends on speed.', {
      ...mixedKeys,
      boundaryExponent: exponent('Exponent of the boundary branch.', '0.05'),
    }),
    'Stribeck, exponential': law('Stribeck, exponential', 'A level at rest that fades, and a viscous term.', {
      boundary: level('Friction at rest.', '0.3'),
      plateau: level('Friction when the boundary part has faded.', '0.12'),
      viscous: level('Friction that the viscous term has at 1 m/s.', '0.2'),
      transition: { ...transition, about: 'Sliding speed by which the boundary part has faded to 1/e.' },
    }),
  },
}
