import type { FlatPaper } from './questionPaper.ts'

/** The kinds of fixture as the paper writes them. */
export const fixtureKinds = [
  'balls on plate',
  'ball on plates',
  'ball on balls',
  'ring on plate',
  'disc on plate',
  'pins on disc',
] as const

export type FixtureWords = (typeof fixtureKinds)[number]

/** Sizes to start from, of a usual rheometer's fixture. Common practice, no source. */
const sizes: Readonly<Record<FixtureWords, Readonly<Record<string, string>>>> = {
  'balls on plate': { balls: '3', ballDiameter: '6.35 mm', trackRadius: '15 mm', trackRadiusUncertainty: '0.05 mm' },
  'ball on plates': {
    plates: '3',
    ballDiameter: '12.7 mm',
    inclination: '45°',
    inclinationUncertainty: '0.2°',
  },
  'ball on balls': { ballDiameter: '12.7 mm' },
  'ring on plate': { outerRadius: '15 mm', innerRadius: '13 mm', segments: '1', pressure: 'uniform wear' },
  'disc on plate': { radius: '12.5 mm', pressure: 'uniform wear' },
  'pins on disc': { pins: '3', pinDiameter: '6 mm', trackRadius: '15 mm', trackRadiusUncertainty: '0.05 mm' },
}

/** Keys of a fixture kind with values to start from. */
export const starterFixture = (kind: FixtureWords): FlatPaper =>
  new Map([
    ['fixture.kind', kind],
    ...Object.entries(sizes[kind]).map(([key, value]) => [`fixture.${key}`, value] as const),
  ])

/**
 * What stands in the sentences of a new study before anybody has said a word: all of it in lighter ink. A dry steel ball on a
 * plastic plate, a usual rheometer; nobody's data.
 */
const starterPaper: FlatPaper = new Map([
  ['title', 'Does B slip more easily than A?'],
  ['rig.name', 'our rheometer'],
  ['rig.torque.accuracy', '1 %'],
  ['rig.torque.floor', '5 µN·m'],
  ['rig.torque.ceiling', '150 mN·m'],
  ['rig.axialForce.accuracy', '1 %'],
  ['rig.axialForce.floor', '10 mN'],
  ['rig.axialForce.ceiling', '50 N'],
  ['rig.angularVelocity.floor', '1e-5 rad/s'],
  ['rig.angularVelocity.ceiling', '300 rad/s'],
  ...starterFixture('balls on plate'),
  ['pair.upper.name', '100Cr6'],
  ['pair.upper.roughness', '0.03 µm'],
  ['pair.lower.name', 'PMMA'],
  ['pair.lower.roughness', '0.1 µm'],
  ['run.temperature', '23 °C'],
  ['ask.slowest', '0.5 mm/s'],
  ['ask.fastest', '200 mm/s'],
  ['deciding.samples', 'A, B'],
])

/** Every key that a paper needs to be planned, with what was said over what is assumed. */
export function completePaper(said: FlatPaper): FlatPaper {
  const kind = fixtureKinds.find((one) => one === said.get('fixture.kind'))
  const starter = new Map([...starterPaper].filter(([path]) => kind === undefined || !path.startsWith('fixture.')))
  return new Map([...starter, ...(kind === undefined ? [] : starterFixture(kind)), ...said])
}
