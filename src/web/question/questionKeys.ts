// Long because it is one table: every quantity of a question that a sentence may show.
import { askDefaults, decidingDefaults, expectedDefaults } from '../../core/plan/index.ts'
import type { Dimension } from '../../core/quantity/index.ts'

/** A quantity of the question: what it is called in a sentence, and the range that is possible at all. SI. */
export interface QuestionKey {
  readonly name: string
  readonly dimension: Dimension
  readonly least: number
  readonly most: number
  /** What the program takes where nothing is said. */
  readonly otherwise?: number
  /** Size of an even step of the arrows; without it each goes to the next round number. */
  readonly even?: number
  /** Always printed in this unit. */
  readonly unit?: string
  /** SI per written number, for keys that are plain numbers: mm³/(N·m), 1/GPa. */
  readonly scale?: number
}

const length = (name: string, least: number, most: number): QuestionKey => ({ name, dimension: 'length', least, most })
const share = (name: string, otherwise: number, even = 0.01): QuestionKey => ({
  name,
  dimension: 'ratio',
  least: 0.001,
  most: 0.99,
  otherwise,
  even,
  unit: '%',
})
const plain = (name: string, least: number, most: number): Omit<QuestionKey, 'otherwise'> => ({
  name,
  dimension: 'ratio',
  least,
  most,
  unit: '1',
})

const surface = (side: 'upper' | 'lower'): Readonly<Record<string, QuestionKey>> => ({
  [`pair.${side}.roughness`]: length(`roughness Rq of the ${side} body`, 1e-10, 1e-3),
  [`pair.${side}.roughnessUncertainty`]: length(`uncertainty of the ${side} roughness`, 0, 1e-3),
  [`pair.${side}.elasticModulus`]: {
    name: `elastic modulus of the ${side} body`,
    dimension: 'pressure',
    least: 100,
    most: 2e12,
  },
  [`pair.${side}.poissonRatio`]: { ...plain(`Poisson ratio of the ${side} body`, -0.99, 0.5), even: 0.01 },
  [`pair.${side}.thickness`]: length(`thickness of the coating or layer on the ${side} body`, 1e-8, 0.1),
  [`bears.${side}.yieldStrength`]: {
    name: `yield strength of the ${side} body`,
    dimension: 'pressure',
    least: 1,
    most: 1e12,
  },
  [`bears.${side}.flexuralStrength`]: {
    name: `strength in bending of the ${side} body`,
    dimension: 'pressure',
    least: 1,
    most: 1e12,
  },
  [`bears.${side}.wearRate`]: { ...plain(`wear rate of the ${side} body, mm³/(N·m)`, 0, 1e3), scale: 1e-9 },
  [`bears.${side}.plateThickness`]: length(`thickness of the whole ${side} body`, 1e-6, 1),
})

const fixture: Readonly<Record<string, QuestionKey>> = {
  'fixture.balls': { name: 'number of balls', dimension: 'count', least: 1, most: 100, even: 1 },
  'fixture.plates': { name: 'number of plates', dimension: 'count', least: 2, most: 100, even: 1 },
  'fixture.pins': { name: 'number of pins', dimension: 'count', least: 1, most: 100, even: 1 },
  'fixture.segments': { name: 'number of segments', dimension: 'count', least: 1, most: 100, even: 1 },
  'fixture.ballDiameter': length('diameter of the ball', 1e-4, 0.1),
  'fixture.ballDiameterUncertainty': { ...length('uncertainty of the ball diameter', 0, 0.01), otherwise: 0 },
  'fixture.trackRadius': length('radius of the track', 1e-4, 0.25),
  'fixture.trackRadiusUncertainty': { ...length('uncertainty of the track radius', 0, 0.01), otherwise: 0 },
  'fixture.inclination': {
    name: 'inclination of the plates',
    dimension: 'angle',
    least: 0.02,
    most: 1.55,
    even: Math.PI / 180,
  },
  'fixture.inclinationUncertainty': {
    name: 'uncertainty of the inclination',
    dimension: 'angle',
    least: 0,
    most: 0.2,
    otherwise: 0,
    even: Math.PI / 1800,
  },
  'fixture.outerRadius': length('outer radius of the ring', 1e-4, 0.25),
  'fixture.innerRadius': length('inner radius of the ring', 1e-4, 0.25),
  'fixture.radius': length('radius of the disc', 1e-4, 0.25),
  'fixture.radiusUncertainty': { ...length('uncertainty of the radius', 0, 0.01), otherwise: 0 },
  'fixture.pinDiameter': length('diameter of a pin', 1e-4, 0.1),
  'fixture.endRadius': length('radius of the domed end', 1e-4, 10),
}

const rig: Readonly<Record<string, QuestionKey>> = {
  'rig.torque.accuracy': {
    ...share('accuracy of the torque', 0.005, 0.001),
    otherwise: undefined,
    least: 0,
    most: 0.49,
  },
  'rig.torque.floor': { name: 'smallest torque that is trusted', dimension: 'torque', least: 1e-12, most: 1000 },
  'rig.torque.ceiling': { name: 'largest torque', dimension: 'torque', least: 1e-12, most: 1000 },
  'rig.axialForce.accuracy': {
    ...share('accuracy of the axial force', 0.005, 0.001),
    otherwise: undefined,
    least: 0,
    most: 0.49,
  },
  'rig.axialForce.floor': { name: 'smallest axial force that is trusted', dimension: 'force', least: 1e-9, most: 1e5 },
  'rig.axialForce.ceiling': { name: 'largest axial force', dimension: 'force', least: 1e-9, most: 1e5 },
  'rig.angularVelocity.floor': { name: 'slowest rotation', dimension: 'angularVelocity', least: 1e-12, most: 1e5 },
  'rig.angularVelocity.ceiling': { name: 'fastest rotation', dimension: 'angularVelocity', least: 1e-12, most: 1e5 },
  'rig.inertia': { name: 'moment of inertia', dimension: 'momentOfInertia', least: 1e-12, most: 1 },
  'rig.torsionalStiffness': {
    name: 'torsional stiffness',
    dimension: 'torsionalStiffness',
    least: 1e-9,
    most: 1e6,
  },
}

const asked: Readonly<Record<string, QuestionKey>> = {
  'ask.slowest': { name: 'slowest sliding speed', dimension: 'velocity', least: 1e-9, most: 1000 },
  'ask.fastest': { name: 'fastest sliding speed', dimension: 'velocity', least: 1e-9, most: 1000 },
  'ask.leastForce': { name: 'smallest load that comes into question', dimension: 'force', least: 1e-6, most: 1e5 },
  'ask.mostForce': { name: 'largest load that comes into question', dimension: 'force', least: 1e-6, most: 1e5 },
  'ask.axialForce': { name: 'axial force', dimension: 'force', least: 1e-6, most: 1e5 },
  'ask.uncertainty': share('uncertainty that one point may have', askDefaults.uncertainty),
  'ask.perDecade': {
    name: 'steps a decade of speed',
    dimension: 'count',
    least: 1,
    most: 100,
    otherwise: askDefaults.perDecade,
    even: 1,
  },
  'ask.turns': { ...plain('turns of each step', 0.01, 1000), otherwise: askDefaults.turns },
  'ask.leastDwell': {
    name: 'shortest step',
    dimension: 'time',
    least: 0.1,
    most: 1e5,
    otherwise: askDefaults.leastDwell,
  },
  'ask.mostDwell': { name: 'longest step', dimension: 'time', least: 0.1, most: 1e6, otherwise: askDefaults.mostDwell },
  'ask.mostTime': {
    name: 'time that a sweep may take',
    dimension: 'time',
    least: 1,
    most: 1e7,
    otherwise: askDefaults.mostTime,
  },
  'ask.mostDistance': {
    name: 'distance that a record may slide',
    dimension: 'length',
    least: 0.001,
    most: 1e6,
    otherwise: askDefaults.mostDistance,
  },
  'ask.conditioningDistance': {
    name: 'distance of running in',
    dimension: 'length',
    least: 0,
    most: 1e6,
    otherwise: askDefaults.conditioningDistance,
  },
  'ask.mostPressure': { name: 'largest pressure in use', dimension: 'pressure', least: 1, most: 1e12 },
  'ask.mostTiltingMoment': {
    name: 'moment that the shaft bears sideways',
    dimension: 'torque',
    least: 1e-6,
    most: 1000,
  },
  'ask.indentationShare': share('share of the coating into which the contact may sink', askDefaults.indentationShare),
  'ask.scarShare': {
    ...plain('width of the scar over that of the contact', 0.01, 99),
    otherwise: askDefaults.scarShare,
  },
  'ask.staticDwell': { name: 'rest before breakaway', dimension: 'time', least: 0.01, most: 1e6 },
  'ask.frictionLimit': { ...plain('friction to be kept', 0.001, 10) },
}

const guessed: Readonly<Record<string, QuestionKey>> = {
  'expected.boundary': {
    ...plain('friction while the surfaces touch', 0.001, 10),
    otherwise: expectedDefaults.boundary,
  },
  'expected.boundarySpread': {
    ...plain('factor within which it lies', 1, 100),
    otherwise: expectedDefaults.boundarySpread,
    even: 0.1,
  },
  'expected.film': { ...plain('friction of a full film', 0.0001, 10), otherwise: expectedDefaults.film },
  'expected.filmSpread': {
    ...plain('factor within which it lies', 1, 100),
    otherwise: expectedDefaults.filmSpread,
    even: 0.1,
  },
  'expected.pressureViscosity': {
    ...plain('pressure–viscosity coefficient, 1/GPa', 0, 200),
    scale: 1e-9,
    even: 0.5,
  },
  'noise.torque': { name: 'noise of one torque reading', dimension: 'torque', least: 0, most: 1000 },
  'noise.axialForce': { name: 'noise of one force reading', dimension: 'force', least: 0, most: 1e5 },
  'noise.correlationTime': {
    name: 'time in which readings forget each other',
    dimension: 'time',
    least: 1e-6,
    most: 1e5,
  },
  'noise.torqueZero': { name: 'uncertainty of the torque zero', dimension: 'torque', least: 0, most: 1000 },
  'noise.forceZero': { name: 'uncertainty of the force zero', dimension: 'force', least: 0, most: 1e5 },
  'noise.tilt': { name: 'tilt of the plate', dimension: 'angle', least: 0, most: 1.5 },
}

const decided: Readonly<Record<string, QuestionKey>> = {
  'deciding.difference': share('difference worth knowing', decidingDefaults.difference),
  'deciding.repeatability': share('scatter between replicates', decidingDefaults.repeatability),
  'deciding.margin': share('difference without meaning', decidingDefaults.margin),
  'deciding.power': { ...share('chance to see it if it is there', decidingDefaults.power, 0.05), most: 0.999 },
  'deciding.significance': { ...share('chance to see what is not there', decidingDefaults.significance), most: 0.49 },
  'deciding.runsPerDay': {
    name: 'runs a day',
    dimension: 'count',
    least: 1,
    most: 1000,
    otherwise: decidingDefaults.runsPerDay,
    even: 1,
  },
  'deciding.seed': {
    name: 'seed of the order',
    dimension: 'count',
    least: 0,
    most: 4294967295,
    otherwise: decidingDefaults.seed,
    even: 1,
  },
}

const around: Readonly<Record<string, QuestionKey>> = {
  'liquid.viscosity': { name: 'viscosity of the liquid', dimension: 'viscosity', least: 1e-7, most: 1e6 },
  'liquid.viscosityUncertainty': { name: 'uncertainty of the viscosity', dimension: 'viscosity', least: 0, most: 1e6 },
  'run.temperature': { name: 'temperature', dimension: 'temperature', least: 200, most: 2273.15, even: 1 },
  'run.roomTemperature': { name: 'temperature of the room', dimension: 'temperature', least: 200, most: 400, even: 1 },
  'run.relativeHumidity': { ...share('humidity of the room', 0.5, 0.05), otherwise: undefined, least: 0, most: 1 },
  'run.axialForce': { name: 'axial force of the run', dimension: 'force', least: 1e-6, most: 1e5 },
}

/** Every quantity of a question by its path. */
export const questionKeys: Readonly<Record<string, QuestionKey>> = {
  ...rig,
  ...fixture,
  ...surface('upper'),
  ...surface('lower'),
  ...around,
  ...asked,
  ...guessed,
  ...decided,
}

/** The key at a path. Throws RangeError for a path that the table has not: a mistake of ours. */
export function questionKey(path: string): QuestionKey {
  const found = questionKeys[path]
  if (found === undefined) throw new RangeError(`no quantity of a question is called ${path}`)
  return found
}
