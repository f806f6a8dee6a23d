// Long because each kind of difference is a few lines with its own sentence, and they are read one against another.
import { printQuantity } from '../quantity/index.ts'
import type { Kelvin, Newton, Pascal, Ratio, ReduceOptions, Setup } from '../terms/index.ts'

/** A tribosystem as far as it is known, and how its number was made. */
export interface ComparedSystem {
  readonly name: string
  readonly setup: Setup
  /** Normal load on one contact; null where nobody said the force. */
  readonly load: Newton | null
  /** Mean pressure of the fresh contact; null where it cannot be had. */
  readonly pressure: Pascal | null
  readonly temperature: Kelvin | null
  /** null for a system without a record. */
  readonly segmentation: ReduceOptions['segmentation'] | 'whole' | null
  /** Directions in which the speed went. */
  readonly directions: readonly (1 | -1)[]
}

/**
 * How much a difference of the systems weighs. `refuses`: the two numbers are of different things. `shifts`: the system alone may
 * make a difference of the size that is said. `notStated`: nobody wrote it down, so nobody knows. `asked`: it is what is compared.
 */
export type SystemWeight = 'refuses' | 'shifts' | 'notStated' | 'asked'

/** One difference between two systems. */
export interface SystemDifference {
  readonly what: string
  readonly first: string
  readonly second: string
  readonly weight: SystemWeight
  readonly sentence: string
}

/** Whether two numbers may be held against each other. */
export interface Comparability {
  readonly verdict: 'comparable' | 'withCare' | 'refused'
  readonly differences: readonly SystemDifference[]
  readonly sameRig: boolean
  readonly sameFixture: boolean
}

/** Sizes nearer than this are one size. */
const oneSize = 1.02
/** Loads differ in earnest from here on: friction of a smooth elastic contact goes as load^(−1/3). */
const loadExponent = 1 / 3

/**
 * Holds two tribosystems against each other: fixture, bodies, load, liquid, temperature, humidity, roughness and how the numbers
 * were made. Limits are common practice without a source, but for the load: a smooth elastic sphere with a constant shear strength gives μ ∝ W^(−1/3).
 */
export function comparability(first: ComparedSystem, second: ComparedSystem): Comparability {
  const pair = { first, second }
  const differences = [
    ...fixtureDifferences(pair),
    ...bodyDifferences(pair),
    ...loadDifferences(pair),
    ...liquidDifferences(pair),
    ...climateDifferences(pair),
    ...definitionDifferences(pair),
  ]
  const sameRig = sameText(first.setup.rig, second.setup.rig)
  const sameFixture = sameText(first.setup.fixture, second.setup.fixture)
  if (!sameRig) {
    differences.push({
      ...{ what: 'rig', first: first.setup.rig.name, second: second.setup.rig.name, weight: 'shifts' },
      sentence:
        'Two rigs share no scales and no zeroes: nothing cancels from the difference, and both shared parts count.',
    })
  }
  const has = (...weights: SystemWeight[]): boolean => differences.some(({ weight }) => weights.includes(weight))
  const verdict = has('refuses') ? 'refused' : has('shifts', 'notStated') ? 'withCare' : 'comparable'
  return { verdict, differences, sameRig, sameFixture }
}

interface Pair {
  readonly first: ComparedSystem
  readonly second: ComparedSystem
}

const sameText = (a: object, b: object): boolean => JSON.stringify(sorted(a)) === JSON.stringify(sorted(b))

const sorted = (thing: object): unknown =>
  Object.entries(thing)
    .map(([key, value]: [string, unknown]) => [
      key,
      typeof value === 'object' && value !== null ? sorted(value) : value,
    ])
    .sort(([a], [b]) => (String(a) < String(b) ? -1 : 1))

const fixtureNames: Readonly<Record<Setup['fixture']['kind'], string>> = {
  ballsOnPlate: 'balls on a plate',
  ballOnPlates: 'a ball on inclined plates',
  ballOnBalls: 'a ball on three balls',
  ringOnPlate: 'a ring on a plate',
  discOnPlate: 'a disc on a plate',
  pinsOnDisc: 'pins on a disc',
}

function fixtureDifferences({ first, second }: Pair): readonly SystemDifference[] {
  const [a, b] = [first.setup.fixture, second.setup.fixture]
  if (a.kind !== b.kind) {
    return [
      {
        ...{ what: 'fixture', first: fixtureNames[a.kind], second: fixtureNames[b.kind], weight: 'refuses' },
        sentence:
          'Another geometry is another contact: simple liquids agree between geometries, emulsions, polymer solutions and soft bodies do not (Shewan and others 2024, abstract).',
      },
    ]
  }
  const found: SystemDifference[] = []
  const sizes = [
    ['diameter of the ball', sizeOf(a, 'ballDiameter'), sizeOf(b, 'ballDiameter')],
    ['diameter of the pin', sizeOf(a, 'pinDiameter'), sizeOf(b, 'pinDiameter')],
    ['radius of the pin’s end', sizeOf(a, 'endRadius'), sizeOf(b, 'endRadius')],
  ] as const
  for (const [what, one, other] of sizes) {
    if (one === undefined || other === undefined || apart(one, other) <= oneSize) continue
    found.push({
      ...{ what, first: lengthWords(one), second: lengthWords(other), weight: 'refuses' },
      sentence: 'Another curvature gives another pressure and another film at the same load and speed.',
    })
  }
  if ('pressure' in a && 'pressure' in b && a.pressure !== b.pressure) {
    found.push({
      ...{ what: 'definition of the lever', first: a.pressure, second: b.pressure, weight: 'refuses' },
      sentence:
        'The lever arm was defined by another law of pressure, which moves friction by up to 4 % at the same torque.',
    })
  }
  return found
}

function sizeOf(fixture: Setup['fixture'], name: string): number | undefined {
  const value: unknown = Reflect.get(fixture, name)
  return typeof value === 'number' ? value : undefined
}

function bodyDifferences({ first, second }: Pair): readonly SystemDifference[] {
  const found: SystemDifference[] = []
  const samples = [first, second].map(({ setup }) => setup.run.sample)
  const otherSample = samples[0] !== undefined && samples[1] !== undefined && samples[0] !== samples[1]
  for (const side of ['upper', 'lower'] as const) {
    const [a, b] = [first.setup.pair[side], second.setup.pair[side]]
    if (fold(a.name) !== fold(b.name)) {
      const asked = side === 'lower' && otherSample
      found.push({
        ...{ what: `${side} body`, first: a.name, second: b.name, weight: asked ? 'asked' : 'refuses' },
        sentence: asked
          ? 'These are the samples: the difference is theirs where all else is alike.'
          : 'Another body is another pair, and friction belongs to the pair.',
      })
    }
    const [rough, other] = [a.roughness, b.roughness]
    if (rough !== undefined && other !== undefined && apart(rough, other) > 1.5) {
      found.push({
        ...{
          what: `roughness of the ${side} body`,
          first: lengthWords(rough),
          second: lengthWords(other),
          weight: 'shifts',
        },
        sentence: 'Roughness moves the speeds at which boundary and mixed friction end, in proportion to it.',
      })
    } else if ((rough === undefined) !== (other === undefined)) {
      found.push(notStated(`roughness of the ${side} body`, rough === undefined ? first : second))
    }
  }
  return found
}

function loadDifferences({ first, second }: Pair): readonly SystemDifference[] {
  if (first.load === null || second.load === null) {
    return [notStated('axial force', first.load === null ? first : second)]
  }
  const ratio = first.load / second.load
  if (apart(first.load, second.load) <= oneSize) return []
  const shift = Math.abs(ratio ** -loadExponent - 1)
  const words = ({ load, pressure }: ComparedSystem): string =>
    `${printQuantity(load ?? 0, 'force', { digits: 3 })} on one contact${pressure === null ? '' : `, mean ${printQuantity(pressure, 'pressure', { digits: 2 })}`}`
  return [
    {
      ...{ what: 'load', first: words(first), second: words(second), weight: shift > 0.1 ? 'refuses' : 'shifts' },
      sentence: `Friction of a smooth elastic contact goes as load^(−1/3): this alone may shift it by ${percent(shift)}.`,
    },
  ]
}

function liquidDifferences({ first, second }: Pair): readonly SystemDifference[] {
  const [a, b] = [first.setup.liquid, second.setup.liquid]
  if (a === undefined && b === undefined) return []
  if (a === undefined || b === undefined || fold(a.name) !== fold(b.name)) {
    return [
      {
        ...{ what: 'liquid', first: a?.name ?? 'dry', second: b?.name ?? 'dry', weight: 'refuses' },
        sentence:
          a === undefined || b === undefined
            ? 'One is dry and the other is not.'
            : 'Another liquid at the same speed is another film; full curves may be held against each other over ηv/W, single numbers may not.',
      },
    ]
  }
  if (a.viscosity === undefined || b.viscosity === undefined) {
    return a.viscosity === b.viscosity ? [] : [notStated('viscosity', a.viscosity === undefined ? first : second)]
  }
  const times = apart(a.viscosity, b.viscosity)
  if (times <= 1.05) return []
  const words = (viscosity: number): string => printQuantity(viscosity, 'viscosity', { digits: 3 })
  return [
    {
      ...{ what: 'viscosity', first: words(a.viscosity), second: words(b.viscosity) },
      weight: times > 1.5 ? 'refuses' : 'shifts',
      sentence: `The same film stands at a speed ${printQuantity(times, 'ratio', { digits: 3, unit: '1' })} times as high: compare over ηv/W.`,
    },
  ]
}

function climateDifferences({ first, second }: Pair): readonly SystemDifference[] {
  const found: SystemDifference[] = []
  const wet = first.setup.liquid !== undefined
  const [hot, cold] = [first.temperature, second.temperature]
  if (hot === null || cold === null) {
    if (hot !== cold) found.push(notStated('temperature', hot === null ? first : second))
  } else if (Math.abs(hot - cold) > 1.5) {
    const kelvin = Math.abs(hot - cold)
    const words = (kelvins: number): string => printQuantity(kelvins, 'temperature', { digits: 4 })
    found.push({
      ...{
        what: 'temperature',
        first: words(hot),
        second: words(cold),
        weight: kelvin > (wet ? 5 : 15) ? 'refuses' : 'shifts',
      },
      sentence: wet
        ? `${kelvin.toFixed(1)} K change the viscosity of an oil by about ${percent(0.04 * kelvin)} (about 4 % a kelvin, common practice).`
        : `${kelvin.toFixed(1)} K apart, and polymers and coatings soften with it.`,
    })
  }
  if (wet) return found
  const [damp, other] = [first.setup.run.relativeHumidity, second.setup.run.relativeHumidity]
  if (damp !== undefined && other !== undefined && Math.abs(damp - other) > 0.15) {
    found.push({
      ...{ what: 'humidity', first: percent(damp), second: percent(other), weight: 'shifts' },
      sentence: 'Dry friction changes with the water that surfaces take up from the air (Chen 2018, review).',
    })
  } else if ((damp === undefined) !== (other === undefined)) {
    found.push(notStated('humidity', damp === undefined ? first : second))
  }
  return found
}

function definitionDifferences({ first, second }: Pair): readonly SystemDifference[] {
  const found: SystemDifference[] = []
  const [a, b] = [first.segmentation, second.segmentation]
  if (a !== null && b !== null && (a === 'ramp') !== (b === 'ramp')) {
    const words = (ramp: boolean): string => (ramp ? 'a ramp' : 'settled steps')
    found.push({
      ...{ what: 'definition of a value', first: words(a === 'ramp'), second: words(b === 'ramp'), weight: 'refuses' },
      sentence: 'A ramp mixes time, distance and speed; a settled step does not.',
    })
  }
  const ways = (system: ComparedSystem): string =>
    [...new Set(system.directions)]
      .sort((one, two) => two - one)
      .map((way) => (way > 0 ? 'up' : 'down'))
      .join(' and ')
  if (a !== null && b !== null && ways(first) !== ways(second)) {
    found.push({
      ...{ what: 'direction of the speeds', first: ways(first), second: ways(second), weight: 'shifts' },
      sentence:
        'Up and down differ by run-in, starvation, heating and wear; each record tells by how much only where it has both.',
    })
  }
  return found
}

const notStated = (what: string, { name }: ComparedSystem): SystemDifference => ({
  ...{ what, first: '', second: '', weight: 'notStated' },
  sentence: `${name} does not say its ${what}, so nobody knows whether the two have the same.`,
})

const apart = (a: number, b: number): number => Math.max(a / b, b / a)
const fold = (name: string): string => name.trim().toLowerCase().replace(/\s+/g, ' ')
const percent = (share: Ratio): string => printQuantity(share, 'ratio', { digits: 2, unit: '%' })
const lengthWords = (metres: number): string => printQuantity(metres, 'length', { digits: 3 })
