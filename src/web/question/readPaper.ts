// Long because it turns one document into one question, section by section.
import { type AskKind, askDefaults, askKinds, type PlanQuestion } from '../../core/plan/index.ts'
import { parseQuantity } from '../../core/quantity/index.ts'
import type { FixtureSpec, SensorLimits, SurfaceSpec } from '../../core/terms/index.ts'
import { questionKey } from './questionKeys.ts'
import type { FlatPaper } from './questionPaper.ts'

/** Something in the paper that cannot be read; only what was written by hand or by another program can bring it about. */
export interface PaperTrouble {
  readonly path: string
  readonly what: string
  readonly mend: string
}

/** Loads that are looked at where neither question nor rig says any, N. The same as the reader of question files. */
const usualForces = { least: 0.1, most: 50 } as const

/** Reads values of a paper by path; keeps what could not be read. */
class PaperValues {
  readonly troubles: PaperTrouble[] = []
  private readonly flat: FlatPaper
  private readonly under: ReadonlyMap<string, number>

  constructor(flat: FlatPaper, under: ReadonlyMap<string, number>) {
    this.flat = flat
    this.under = under
  }

  has = (path: string): boolean => this.flat.has(path) || this.under.has(path)

  text = (path: string): string | undefined => this.flat.get(path)

  /** SI; what a moving hand holds goes before what is written. */
  number = (path: string): number | undefined => {
    const held = this.under.get(path)
    if (held !== undefined) return held
    const text = this.flat.get(path)
    if (text === undefined) return questionKey(path).otherwise
    const read = quantityAt(path, text)
    if (read.ok) return read.value
    this.troubles.push({ path, what: read.what, mend: read.mend })
    return undefined
  }

  /** A key that every complete paper has. */
  need = (path: string): number => {
    const value = this.number(path)
    if (value === undefined && !this.troubles.some((trouble) => trouble.path === path)) {
      this.troubles.push({ path, what: `${questionKey(path).name} is not said.`, mend: 'Say it in the sentence.' })
    }
    return value ?? questionKey(path).least
  }

  /** Only the keys that are there. */
  given = <K extends string>(section: string, keys: readonly K[]): { readonly [P in K]?: number } => {
    const found = keys.flatMap((key) => {
      const path = `${section}.${key}`
      const value = this.has(path) ? this.number(path) : undefined
      return value === undefined ? [] : [[key, value] as const]
    })
    return Object.fromEntries(found) as { [P in K]?: number } // made of `keys` alone, just above
  }
}

type ReadQuantity = ReturnType<typeof parseQuantity>
const readings = new Map<string, ReadQuantity>()

/** The quantity of a key from its text, in SI. Remembers: the same few texts are read at each frame. */
export function quantityAt(path: string, text: string): ReadQuantity {
  const name = `${path} ${text}`
  const before = readings.get(name)
  if (before !== undefined) return before
  const { dimension, scale = 1 } = questionKey(path)
  const read = parseQuantity(text, dimension)
  const scaled = read.ok && scale !== 1 ? { ...read, value: read.value * scale } : read
  if (readings.size > 5000) readings.clear()
  readings.set(name, scaled)
  return scaled
}

/** The question of a complete paper, and all that could not be read. `under` holds values under a moving hand, SI. */
export function readPaper(
  flat: FlatPaper,
  under: ReadonlyMap<string, number> = new Map(),
): { readonly question: PlanQuestion; readonly troubles: readonly PaperTrouble[] } {
  const values = new PaperValues(flat, under)
  const rig = rigOf(values)
  const coefficient = values.has('expected.pressureViscosity') ? values.number('expected.pressureViscosity') : undefined
  const liquid = values.text('liquid.name')
  const question: PlanQuestion = {
    title: values.text('title') ?? 'A question without a title',
    rig,
    fixture: fixtureOf(values),
    pair: { upper: surfaceOf(values, 'upper'), lower: surfaceOf(values, 'lower') },
    ...(liquid === undefined
      ? {}
      : { liquid: { name: liquid, ...values.given('liquid', ['viscosity', 'viscosityUncertainty']) } }),
    ...(coefficient === undefined ? {} : { pressureViscosity: coefficient }),
    run: values.given('run', ['axialForce', 'temperature', 'relativeHumidity', 'roomTemperature']),
    bears: { upper: bearsOf(values, 'upper'), lower: bearsOf(values, 'lower') },
    expected: {
      boundary: values.need('expected.boundary'),
      boundarySpread: values.need('expected.boundarySpread'),
      film: values.need('expected.film'),
      filmSpread: values.need('expected.filmSpread'),
    },
    noise: values.given('noise', ['torque', 'axialForce', 'correlationTime', 'torqueZero', 'forceZero', 'tilt']),
    ask: askOf(values, rig),
    deciding: decidingOf(values),
  }
  return { question, troubles: values.troubles }
}

const surfaceOf = (values: PaperValues, side: 'upper' | 'lower'): SurfaceSpec => ({
  name: values.text(`pair.${side}.name`) ?? 'a body',
  ...values.given(`pair.${side}`, ['roughness', 'roughnessUncertainty', 'elasticModulus', 'poissonRatio', 'thickness']),
})

const bearsOf = (values: PaperValues, side: 'upper' | 'lower'): PlanQuestion['bears']['upper'] =>
  values.given(`bears.${side}`, ['yieldStrength', 'flexuralStrength', 'wearRate', 'plateThickness'])

function rigOf(values: PaperValues): PlanQuestion['rig'] {
  const sensor = (path: string): SensorLimits => ({
    scaleAccuracy: values.need(`${path}.accuracy`),
    ...values.given(path, ['floor', 'ceiling']),
  })
  return {
    name: values.text('rig.name') ?? 'a rig',
    torque: sensor('rig.torque'),
    axialForce: sensor('rig.axialForce'),
    angularVelocity: values.given('rig.angularVelocity', ['floor', 'ceiling']),
    ...values.given('rig', ['inertia', 'torsionalStiffness']),
  }
}

function fixtureOf(values: PaperValues): FixtureSpec {
  const need = (key: string): number => values.need(`fixture.${key}`)
  const face = () => ({
    pressure:
      values.text('fixture.pressure') === 'uniform pressure' ? ('uniformPressure' as const) : ('uniformWear' as const),
    radiusUncertainty: need('radiusUncertainty'),
  })
  const ball = () => ({
    ballDiameter: need('ballDiameter'),
    ballDiameterUncertainty: need('ballDiameterUncertainty'),
  })
  const track = () => ({
    trackRadius: need('trackRadius'),
    trackRadiusUncertainty: need('trackRadiusUncertainty'),
  })
  switch (values.text('fixture.kind')) {
    case 'ball on plates': {
      const inclination = need('inclination')
      const inclinationUncertainty = need('inclinationUncertainty')
      return { kind: 'ballOnPlates', plates: need('plates'), ...ball(), inclination, inclinationUncertainty }
    }
    case 'ball on balls':
      return { kind: 'ballOnBalls', ...ball() }
    case 'ring on plate': {
      const radii = { outerRadius: need('outerRadius'), innerRadius: need('innerRadius') }
      return { kind: 'ringOnPlate', ...radii, segments: need('segments'), ...face() }
    }
    case 'disc on plate':
      return { kind: 'discOnPlate', radius: need('radius'), ...face() }
    case 'pins on disc':
      return {
        kind: 'pinsOnDisc',
        pins: need('pins'),
        pinDiameter: need('pinDiameter'),
        ...values.given('fixture', ['endRadius']),
        ...track(),
      }
    default:
      return { kind: 'ballsOnPlate', balls: need('balls'), ballDiameter: need('ballDiameter'), ...track() }
  }
}

function askOf(values: PaperValues, rig: PlanQuestion['rig']): PlanQuestion['ask'] {
  const numbers = [
    'frictionLimit',
    'uncertainty',
    'perDecade',
    'turns',
    'leastDwell',
    'mostDwell',
    'mostTime',
    'mostDistance',
    'conditioningDistance',
    'mostPressure',
    'mostTiltingMoment',
    'indentationShare',
    'scarShare',
    'staticDwell',
  ] as const
  const axialForce = values.number('ask.axialForce') ?? values.number('run.axialForce')
  const kind: AskKind | undefined = askKinds.find((one) => one === values.text('ask.kind'))
  const side = values.text('ask.limitSide')
  const ways = { up: 'up', down: 'down', 'up and down': 'upAndDown' } as const
  const said = values.text('ask.direction')
  return {
    ...askDefaults,
    ...values.given('ask', numbers),
    slowest: values.need('ask.slowest'),
    fastest: values.need('ask.fastest'),
    leastForce: values.number('ask.leastForce') ?? rig.axialForce.floor ?? usualForces.least,
    mostForce: values.number('ask.mostForce') ?? rig.axialForce.ceiling ?? usualForces.most,
    ...(axialForce === undefined ? {} : { axialForce }),
    ...(kind === undefined ? {} : { kind }),
    ...(side === undefined ? {} : { limitSide: side === 'at least' ? ('atLeast' as const) : ('atMost' as const) }),
    direction: said === 'up' || said === 'down' ? ways[said] : 'upAndDown',
  }
}

function decidingOf(values: PaperValues): PlanQuestion['deciding'] {
  const samples = (values.text('deciding.samples') ?? values.text('run.sample') ?? 'sample')
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '')
  const checkStandard = values.text('deciding.checkStandard')
  return {
    samples: [...new Set(samples)],
    difference: values.need('deciding.difference'),
    repeatability: values.need('deciding.repeatability'),
    repeatabilityFrom: values.text('deciding.repeatabilityFrom') === 'measured' ? 'measured' : 'assumed',
    margin: values.need('deciding.margin'),
    power: values.need('deciding.power'),
    significance: values.need('deciding.significance'),
    runsPerDay: values.need('deciding.runsPerDay'),
    ...(checkStandard === undefined ? {} : { checkStandard }),
    seed: values.need('deciding.seed'),
  }
}
