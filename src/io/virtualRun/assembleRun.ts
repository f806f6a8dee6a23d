import type {
  Conditions,
  Disturbances,
  Dwell,
  FrictionLaw,
  RunSheet,
  SensedChannel,
  SensorNoise,
  SpeedDirection,
  SpeedPlan,
  VirtualRig,
  VirtualRun,
} from '../../core/rig/index.ts'
import { familyLaw, usualColumns } from '../../core/rig/index.ts'
import type { Setup } from '../../core/terms/index.ts'
import { lawsWritten } from './frictionKeys.ts'
import { listedSpeeds } from './listedSpeeds.ts'
import type { RunValues } from './runValues.ts'

/** Temperature of a run that names none. */
const roomTemperature = 296.15

const secondsPerHour = 3600

/** The virtual run from values that have passed every check; `setup` is the part that it shares with a setup file. */
export function assembleRun(values: RunValues, setup: Setup): VirtualRun {
  const left = new Set<string>()
  if (values.text('table.stepColumn', 'yes') === 'no') left.add('step')
  if (values.text('table.angleColumn', 'yes') === 'no') left.add('angle')
  return {
    fixture: setup.fixture,
    rig: rigOf(values, setup),
    sheet: sheetOf(values, setup),
    friction: lawOf(values),
    conditions: conditionsOf(values, setup),
    disturbances: disturbancesOf(values),
    columns: usualColumns.filter((name) => !left.has(name)),
  }
}

function conditionsOf(values: RunValues, setup: Setup): Conditions | undefined {
  if (!values.has('conditions')) return undefined
  const perKilo = 1000
  return {
    loadExponent: values.number('conditions.loadExponent', 0),
    referenceForce: values.number('conditions.referenceForce', values.number('run.axialForce')),
    activationEnergy: values.number('conditions.activationEnergy', 0) * perKilo,
    referenceTemperature: values.number('conditions.referenceTemperature', setup.run.temperature ?? roomTemperature),
  }
}

function rigOf(values: RunValues, setup: Setup): VirtualRig {
  const level = values.number('signal.residualTorque', 0)
  const perSpeed = values.number('signal.dragAtOneRadianPerSecond', 0)
  const zero = values.number('signal.forceZero', 0)
  const perHour = values.number('signal.forceDriftPerHour', 0)
  return {
    torqueCeiling: setup.rig.torque.ceiling,
    noise: noiseOf(values),
    riseTime: values.number('signal.riseTime', 0),
    inertia: setup.rig.inertia,
    torsionalStiffness: setup.rig.torsionalStiffness,
    residualTorque: { level, perSpeed },
    forceZero: { level: zero, perSecond: perHour / secondsPerHour },
  }
}

const sensed: readonly SensedChannel[] = ['torque', 'axialForce', 'gap', 'temperature', 'angularVelocity']

function noiseOf(values: RunValues): VirtualRig['noise'] {
  const channels = sensed.filter((channel) => values.has(`noise.${channel}`))
  return Object.fromEntries(
    channels.map((channel): [SensedChannel, SensorNoise] => {
      const of = (key: string) => values.number(`noise.${channel}.${key}`, 0)
      return [
        channel,
        {
          white: of('white'),
          correlated: of('correlated'),
          correlation: of('correlation'),
          resolution: of('resolution'),
        },
      ]
    }),
  )
}

function sheetOf(values: RunValues, setup: Setup): RunSheet {
  const blank = values.text('sheet.blank', 'none')
  return {
    speeds: speedsOf(values),
    dwell: dwellOf(values),
    samplingRate: values.number('sheet.samplingRate'),
    axialForce: values.number('run.axialForce'),
    temperature: setup.run.temperature ?? roomTemperature,
    gap: 0,
    blankBefore: blank.startsWith('before'),
    blankAfter: blank.endsWith('after'),
    lift: values.number('sheet.lift', 1e-3),
  }
}

const directions: Readonly<Record<string, SpeedDirection>> = { up: 'up', down: 'down', 'up and down': 'upAndDown' }

function speedsOf(values: RunValues): SpeedPlan {
  const kind = values.text('speeds.kind')
  if (kind === 'list') return { kind, speeds: listedSpeeds(values.text('speeds.speeds')).speeds }
  const ends = { slowest: values.number('speeds.slowest'), fastest: values.number('speeds.fastest') }
  const direction = directions[values.text('speeds.direction', 'up')]
  if (kind === 'range') return { kind, ...ends, perDecade: values.number('speeds.perDecade'), direction }
  const law = values.text('speeds.law', 'logarithmic') === 'linear' ? 'linear' : 'logarithmic'
  return { kind: 'ramp', ...ends, duration: values.number('speeds.duration'), law, direction }
}

function dwellOf(values: RunValues): Dwell {
  if (!values.has('sheet.turns')) return { kind: 'time', seconds: values.number('sheet.dwell', 0) }
  return {
    kind: 'turns',
    turns: values.number('sheet.turns'),
    least: values.number('sheet.leastDwell', 5),
    most: values.number('sheet.mostDwell', 120),
  }
}

function lawOf(values: RunValues): FrictionLaw {
  const { model, parameters } = lawsWritten[values.text('friction.kind')]
  const read = Object.entries(parameters).map(([name, key]) => [name, values.number(`friction.${key}`)])
  return familyLaw(model, Object.fromEntries(read))
}

function disturbancesOf(values: RunValues): Disturbances {
  const at = <T>(name: string, make: (of: (key: string, otherwise?: number) => number) => T): T | undefined =>
    values.has(`disturbances.${name}`)
      ? make((key, otherwise) => values.number(`disturbances.${name}.${key}`, otherwise))
      : undefined
  const ripple = (name: string) =>
    at(name, (of) => [{ order: of('order', 1), amplitude: of('amplitude'), phase: of('phase', 0) }])
  const form = values.text('disturbances.tilt.form', 'tangent') === 'cosine' ? 'cosine' : 'tangent'
  return {
    frictionRipple: ripple('frictionRipple'),
    forceRipple: ripple('forceRipple'),
    tilt: at('tilt', (of) => ({ angle: of('angle'), phase: of('phase', 0), form, carriers: 1 })),
    gapRunOut: at('gapRunOut', (of) => ({ amplitude: of('amplitude'), phase: of('phase', 0) })),
    stickSlip:
      at('stickSlip', (of) => ({
        kind: 'sawTooth',
        below: of('below'),
        frequency: of('frequency'),
        share: of('share'),
        scatter: of('scatter', 0),
      })) ??
      at('springStickSlip', (of) => ({
        kind: 'spring',
        staticExcess: of('staticExcess'),
        dampingRatio: of('dampingRatio'),
        scatter: of('scatter', 0),
      })),
    hunting: at('hunting', (of) => ({
      frequency: of('frequency'),
      speedShare: of('speedShare'),
      torque: of('torque'),
    })),
    lostContact: at('lostContact', (of) => [{ step: of('step'), from: of('from'), to: of('to'), share: of('share') }]),
    wear:
      at('wear', (of) => ({ kind: 'perDistance', rate: of('depthPerMetre') })) ??
      at('archardWear', (of) => ({ kind: 'archard', specificRate: of('specificRate') })),
    wornSpot: at('wornSpot', (of) => ({
      angle: of('angle'),
      width: of('width'),
      excess: of('excess'),
      from: of('from'),
      to: of('to'),
    })),
    thermalDrift: at('warming', (of) => ({
      change: of('change'),
      timeConstant: of('timeConstant'),
      growth: of('growthPerKelvin'),
    })),
    runningIn: at('runningIn', (of) => ({ excess: of('excess'), distance: of('distance') })),
    coatingFailure: at('coatingFailure', (of) => ({
      distance: of('distance'),
      width: of('width', 0),
      friction: of('friction'),
    })),
    liquidChange: at('liquidChange', (of) => ({ share: of('share'), timeConstant: of('timeConstant') })),
  }
}
