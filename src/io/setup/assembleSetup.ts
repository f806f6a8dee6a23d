import { fixtureGeometry, rotationFromSpeed } from '../../core/fixture/index.ts'
import type { FixtureSpec, ReduceOptions, SensorLimits, Setup, SurfaceSpec } from '../../core/terms/index.ts'
import { fixtureKindsWritten } from './fixtureKeys.ts'
import type { Gathered } from './gathered.ts'
import { optionKeys, segmentationsWritten } from './optionKeys.ts'
import { readViscosities } from './viscosityLists.ts'
import { readScars, readSections } from './wornLists.ts'

/** Looks values up by path; what the key table calls required is there once no problem is left. */
class Values {
  private readonly gathered: Gathered['values']

  constructor(gathered: Gathered['values']) {
    this.gathered = gathered
  }

  has(path: string): boolean {
    return [...this.gathered.keys()].some((key) => key === path || key.startsWith(`${path}.`))
  }

  number(path: string): number | undefined {
    const value = this.gathered.get(path)?.value
    return typeof value === 'number' ? value : undefined
  }

  text(path: string): string | undefined {
    const value = this.gathered.get(path)?.value
    return typeof value === 'string' ? value : undefined
  }

  needNumber(path: string): number {
    const value = this.number(path)
    if (value === undefined) throw new RangeError(`setup key ${path} must have been read as a number`)
    return value
  }

  needText(path: string): string {
    const value = this.text(path)
    if (value === undefined) throw new RangeError(`setup key ${path} must have been read as text`)
    return value
  }
}

/** The fixture alone, before its possibility is checked. Throws RangeError when a required key has not been read. */
export const assembleFixture = (gathered: Gathered): FixtureSpec => fixtureOf(new Values(gathered.values))

/** The setup from values that have passed every check. */
export function assembleSetup(gathered: Gathered): Setup {
  const values = new Values(gathered.values)
  const fixture = fixtureOf(values)
  const liquid = values.has('liquid')
    ? {
        name: values.needText('liquid.name'),
        ...given({
          viscosity: values.number('liquid.viscosity'),
          viscosityUncertainty: values.number('liquid.viscosityUncertainty'),
          byTemperature: viscosities(values.text('liquid.byTemperature'), 'temperature'),
          byRate: viscosities(values.text('liquid.byRate'), 'frequency'),
        }),
      }
    : undefined
  return {
    rig: {
      name: values.needText('rig.name'),
      torque: sensor(values, 'rig.torque'),
      axialForce: sensor(values, 'rig.axialForce'),
      angularVelocity: given({
        floor: values.number('rig.angularVelocity.floor'),
        ceiling: values.number('rig.angularVelocity.ceiling'),
      }),
      ...given({
        inertia: values.number('rig.inertia'),
        torsionalStiffness: values.number('rig.torsionalStiffness'),
      }),
    },
    fixture,
    pair: { upper: surface(values, 'pair.upper'), lower: surface(values, 'pair.lower') },
    ...given({ liquid }),
    run: run(values, fixture),
    ...given({ worn: values.has('worn') ? worn(values) : undefined }),
    options: options(values),
  }
}

const viscosities = (text: string | undefined, at: 'temperature' | 'frequency') =>
  text === undefined ? undefined : readViscosities(text, at).items

const sensor = (values: Values, path: string): SensorLimits => ({
  scaleAccuracy: values.needNumber(`${path}.accuracy`),
  ...given({ floor: values.number(`${path}.floor`), ceiling: values.number(`${path}.ceiling`) }),
})

const surface = (values: Values, path: string): SurfaceSpec => ({
  name: values.needText(`${path}.name`),
  ...given({
    roughness: values.number(`${path}.roughness`),
    roughnessUncertainty: values.number(`${path}.roughnessUncertainty`),
    elasticModulus: values.number(`${path}.elasticModulus`),
    poissonRatio: values.number(`${path}.poissonRatio`),
    thickness: values.number(`${path}.thickness`),
  }),
})

function run(values: Values, fixture: FixtureSpec): Setup['run'] {
  const speed = values.number('run.slidingSpeed')
  const rotation = speed === undefined ? undefined : rotationFromSpeed(fixtureGeometry(fixture), speed)
  return given({
    axialForce: values.number('run.axialForce'),
    temperature: values.number('run.temperature'),
    angularVelocity: values.number('run.angularVelocity') ?? rotation,
    sample: values.text('run.sample'),
    operator: values.text('run.operator'),
    note: values.text('run.note'),
    relativeHumidity: values.number('run.relativeHumidity'),
    roomTemperature: values.number('run.roomTemperature'),
  })
}

function worn(values: Values): NonNullable<Setup['worn']> {
  const [scars, sections] = [values.text('worn.scars'), values.text('worn.sections')]
  return given({
    scars: scars === undefined ? undefined : readScars(scars).items,
    scarUncertainty: values.number('worn.scarUncertainty'),
    sections: sections === undefined ? undefined : readSections(sections).items,
    sectionUncertainty: values.number('worn.sectionUncertainty'),
    trackWidth: values.number('worn.trackWidth'),
    trackWidthUncertainty: values.number('worn.trackWidthUncertainty'),
    distanceBefore: values.number('worn.distanceBefore'),
    growthPerKelvin: values.number('worn.growthPerKelvin'),
    growthUncertainty: values.number('worn.growthUncertainty'),
  })
}

function options(values: Values): Partial<ReduceOptions> {
  const written = values.text('options.segmentation')
  const numbers = Object.entries(optionKeys.keys)
    .filter(([, key]) => key.is === 'quantity')
    .map(([name]) => [name, values.number(`options.${name}`)] as const)
  return {
    ...given({ segmentation: written === undefined ? undefined : segmentationsWritten[written] }),
    ...given(Object.fromEntries(numbers)),
  }
}

function fixtureOf(values: Values): FixtureSpec {
  const number = (name: string): number => values.needNumber(`fixture.${name}`)
  const uncertainty = (name: string): number => values.number(`fixture.${name}`) ?? 0
  const ball = () => ({
    ballDiameter: number('ballDiameter'),
    ballDiameterUncertainty: uncertainty('ballDiameterUncertainty'),
  })
  const track = () => ({
    trackRadius: number('trackRadius'),
    trackRadiusUncertainty: uncertainty('trackRadiusUncertainty'),
  })
  const face = () =>
    ({
      pressure: values.text('fixture.pressure') === 'uniform pressure' ? 'uniformPressure' : 'uniformWear',
      radiusUncertainty: uncertainty('radiusUncertainty'),
    }) as const
  const kind = fixtureKindsWritten[values.needText('fixture.kind')]
  switch (kind) {
    case 'ballsOnPlate':
      return { kind, balls: number('balls'), ballDiameter: number('ballDiameter'), ...track() }
    case 'ballOnPlates': {
      const inclinationUncertainty = uncertainty('inclinationUncertainty')
      return { kind, plates: number('plates'), ...ball(), inclination: number('inclination'), inclinationUncertainty }
    }
    case 'ballOnBalls':
      return { kind, ...ball() }
    case 'ringOnPlate': {
      const radii = { outerRadius: number('outerRadius'), innerRadius: number('innerRadius') }
      return { kind, ...radii, segments: number('segments'), ...face() }
    }
    case 'discOnPlate':
      return { kind, radius: number('radius'), ...face() }
    case 'pinsOnDisc': {
      const dome = given({ endRadius: values.number('fixture.endRadius') })
      return { kind, pins: number('pins'), pinDiameter: number('pinDiameter'), ...dome, ...track() }
    }
  }
}

/** The entries that are not undefined, so that an absent key stays absent. */
function given<T extends object>(entries: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  const kept = Object.entries(entries).filter(([, value]) => value !== undefined)
  return Object.fromEntries(kept) as { [K in keyof T]?: Exclude<T[K], undefined> }
}
