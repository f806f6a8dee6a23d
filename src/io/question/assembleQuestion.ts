import {
  type Ask,
  askDefaults,
  askKinds,
  type BodyBears,
  type Deciding,
  decidingDefaults,
  type ExpectedNoise,
  expectedDefaults,
  type PlanQuestion,
} from '../../core/plan/index.ts'
import type { Setup } from '../../core/terms/index.ts'
import type { RunValues } from '../virtualRun/runValues.ts'

/** Loads looked at where neither question nor rig says any. Common practice, no source. */
const usualForces = { least: 0.1, most: 50 } as const

/** 1/GPa to 1/Pa, and mm³/(N·m) to m³/(N·m). */
const perBillion = 1e-9

/** The question from values that have passed every check; `setup` is the part that it shares with a setup file. */
export function assembleQuestion(values: RunValues, setup: Setup): PlanQuestion {
  const pressureViscosity = values.maybe('expected.pressureViscosity')
  return {
    title: values.text('title', 'A question without a title'),
    rig: setup.rig,
    fixture: setup.fixture,
    pair: setup.pair,
    ...(setup.liquid === undefined ? {} : { liquid: setup.liquid }),
    ...(pressureViscosity === undefined ? {} : { pressureViscosity: pressureViscosity * perBillion }),
    run: setup.run,
    bears: { upper: bears(values, 'upper'), lower: bears(values, 'lower') },
    expected: {
      boundary: values.number('expected.boundary', expectedDefaults.boundary),
      boundarySpread: values.number('expected.boundarySpread', expectedDefaults.boundarySpread),
      film: values.number('expected.film', expectedDefaults.film),
      filmSpread: values.number('expected.filmSpread', expectedDefaults.filmSpread),
    },
    noise: noise(values),
    ask: ask(values, setup),
    deciding: deciding(values, setup),
  }
}

/** The keys of a section that were given, as numbers. */
function given<K extends string>(values: RunValues, section: string, keys: readonly K[]): { [P in K]?: number } {
  const found = keys.flatMap((key) => {
    const value = values.maybe(`${section}.${key}`)
    return value === undefined ? [] : [[key, value] as const]
  })
  return Object.fromEntries(found) as { [P in K]?: number } // made of `keys` alone, just above
}

function bears(values: RunValues, side: 'upper' | 'lower'): BodyBears {
  const wearRate = values.maybe(`bears.${side}.wearRate`)
  return {
    ...given(values, `bears.${side}`, ['yieldStrength', 'flexuralStrength', 'plateThickness']),
    ...(wearRate === undefined ? {} : { wearRate: wearRate * perBillion }),
  }
}

const noise = (values: RunValues): Partial<ExpectedNoise> =>
  given(values, 'noise', ['torque', 'axialForce', 'correlationTime', 'torqueZero', 'forceZero', 'tilt'])

const directions: Readonly<Record<string, Ask['direction']>> = { up: 'up', down: 'down', 'up and down': 'upAndDown' }

function ask(values: RunValues, setup: Setup): Ask {
  const axialForce = values.maybe('ask.axialForce') ?? setup.run.axialForce
  const least = values.number('ask.leastForce', setup.rig.axialForce.floor ?? usualForces.least)
  const most = values.number('ask.mostForce', setup.rig.axialForce.ceiling ?? usualForces.most)
  const kind = values.has('ask.kind') ? askKinds.find((one) => one === values.text('ask.kind')) : undefined
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
  return {
    ...askDefaults,
    ...given(values, 'ask', numbers),
    ...(kind === undefined ? {} : { kind }),
    ...(values.has('ask.limitSide')
      ? { limitSide: values.text('ask.limitSide') === 'at least' ? ('atLeast' as const) : ('atMost' as const) }
      : {}),
    slowest: values.number('ask.slowest'),
    fastest: values.number('ask.fastest'),
    leastForce: least,
    mostForce: most,
    ...(axialForce === undefined ? {} : { axialForce }),
    direction: directions[values.text('ask.direction', 'up and down')],
  }
}

function deciding(values: RunValues, setup: Setup): Deciding {
  const samples = values
    .text('deciding.samples', setup.run.sample ?? 'sample')
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '')
  const numbers = ['difference', 'repeatability', 'margin', 'power', 'significance', 'runsPerDay', 'seed'] as const
  return {
    ...decidingDefaults,
    ...given(values, 'deciding', numbers),
    samples: [...new Set(samples)],
    repeatabilityFrom: values.text('deciding.repeatabilityFrom', 'assumed') === 'measured' ? 'measured' : 'assumed',
    ...(values.has('deciding.checkStandard') ? { checkStandard: values.text('deciding.checkStandard') } : {}),
  }
}
