import type { FixtureSpec, LiquidSpec, SensorLimits, Setup, SurfaceSpec, WornSpec } from '../../core/terms/index.ts'
import { fixtureKindsWritten } from './fixtureKeys.ts'
import { segmentationsWritten } from './optionKeys.ts'
import { writeViscosities } from './viscosityLists.ts'
import { writeScars, writeSections } from './wornLists.ts'

type Flat = Map<string, number | string>

/** A setup as values by path, the inverse of `assembleSetup`: keys and words as files write them, numbers in SI. */
export function flattenSetup(setup: Setup): ReadonlyMap<string, number | string> {
  const flat: Flat = new Map()
  const { rig, pair, liquid, run, worn, options } = setup
  put(flat, 'rig', { name: rig.name, inertia: rig.inertia, torsionalStiffness: rig.torsionalStiffness })
  put(flat, 'rig.torque', sensor(rig.torque))
  put(flat, 'rig.axialForce', sensor(rig.axialForce))
  put(flat, 'rig.angularVelocity', rig.angularVelocity)
  put(flat, 'fixture', fixture(setup.fixture))
  put(flat, 'pair.upper', surface(pair.upper))
  put(flat, 'pair.lower', surface(pair.lower))
  if (liquid !== undefined) put(flat, 'liquid', liquidFlat(liquid))
  put(flat, 'run', { ...run })
  if (worn !== undefined) put(flat, 'worn', wornFlat(worn))
  const segmentation =
    options.segmentation === undefined ? undefined : written(segmentationsWritten, options.segmentation)
  put(flat, 'options', { ...options, segmentation })
  return flat
}

function put(flat: Flat, path: string, entries: Readonly<Record<string, number | string | undefined>>): void {
  for (const [name, value] of Object.entries(entries)) {
    if (value !== undefined) flat.set(`${path}.${name}`, value)
  }
}

const liquidFlat = ({ byTemperature, byRate, ...plain }: LiquidSpec) => ({
  ...plain,
  byTemperature: byTemperature === undefined ? undefined : writeViscosities(byTemperature, 'temperature'),
  byRate: byRate === undefined ? undefined : writeViscosities(byRate, 'frequency'),
})

const wornFlat = ({ scars, sections, ...plain }: WornSpec) => ({
  scars: scars === undefined ? undefined : writeScars(scars),
  sections: sections === undefined ? undefined : writeSections(sections),
  ...plain,
})

const sensor = ({ floor, ceiling, scaleAccuracy }: SensorLimits) => ({ accuracy: scaleAccuracy, floor, ceiling })

const surface = (spec: SurfaceSpec) => ({ ...spec })

function fixture(spec: FixtureSpec): Record<string, number | string | undefined> {
  const kind = written(fixtureKindsWritten, spec.kind)
  if (spec.kind !== 'ringOnPlate' && spec.kind !== 'discOnPlate') return { ...spec, kind }
  return { ...spec, kind, pressure: spec.pressure === 'uniformWear' ? 'uniform wear' : 'uniform pressure' }
}

/** The word that a table of words gives to a value of ours. */
function written(words: Readonly<Record<string, string>>, value: string): string {
  const entry = Object.entries(words).find(([, own]) => own === value)
  if (entry === undefined) throw new RangeError(`setup files have no word for ${value}`)
  return entry[0]
}
