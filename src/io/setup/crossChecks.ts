import { type FixtureFault, fixtureFaults } from '../../core/fixture/index.ts'
import { type Dimension, printExact } from '../../core/quantity/index.ts'
import type { Problem } from '../../core/terms/index.ts'
import { assembleFixture } from './assembleSetup.ts'
import { fixtureKeys } from './fixtureKeys.ts'
import type { Gathered } from './gathered.ts'
import { type SetupProblemKind, setupProblem } from './setupProblem.ts'
import { readViscosities } from './viscosityLists.ts'
import { readScars, readSections } from './wornLists.ts'

/** Pairs of keys of which the first must stay below the second, and why. `andPresent`: the first makes no sense alone. */
const orders: readonly {
  readonly low: string
  readonly high: string
  readonly dimension: Dimension
  readonly why: string
  readonly andPresent?: true
}[] = [
  { low: 'rig.torque.floor', high: 'rig.torque.ceiling', dimension: 'torque', why: 'the floor lies under the ceiling' },
  {
    low: 'rig.axialForce.floor',
    high: 'rig.axialForce.ceiling',
    dimension: 'force',
    why: 'the floor lies under the ceiling',
  },
  {
    low: 'rig.angularVelocity.floor',
    high: 'rig.angularVelocity.ceiling',
    dimension: 'angularVelocity',
    why: 'the floor lies under the ceiling',
  },
  ...(['upper', 'lower'] as const).map(
    (side) =>
      ({
        low: `pair.${side}.roughnessUncertainty`,
        high: `pair.${side}.roughness`,
        dimension: 'length',
        why: 'an uncertainty is smaller than its value',
        andPresent: true,
      }) as const,
  ),
  {
    low: 'liquid.viscosityUncertainty',
    high: 'liquid.viscosity',
    dimension: 'viscosity',
    why: 'an uncertainty is smaller than its value',
    andPresent: true,
  },
  {
    low: 'run.axialForce',
    high: 'rig.axialForce.ceiling',
    dimension: 'force',
    why: 'the rig cannot press harder than it can',
  },
  {
    low: 'run.angularVelocity',
    high: 'rig.angularVelocity.ceiling',
    dimension: 'angularVelocity',
    why: 'the rig cannot turn faster than it can',
  },
]

/** What no key can tell alone: values that contradict each other and fixtures that cannot exist. */
export function crossChecks(gathered: Gathered): readonly Problem[] {
  return [
    ...orderProblems(gathered),
    ...speedProblems(gathered),
    ...fixtureProblems(gathered),
    ...listProblems(gathered),
  ]
}

function orderProblems({ values }: Gathered): Problem[] {
  const problems: Problem[] = []
  for (const { low, high, dimension, why, andPresent } of orders) {
    const lower = values.get(low)
    const upper = values.get(high)
    if (lower === undefined || typeof lower.value !== 'number') continue
    if (upper === undefined || typeof upper.value !== 'number') {
      if (andPresent !== true) continue
      const mend = `Add ${high} or take ${low} out.`
      problems.push(setupProblem(lower.place, { kind: 'valuesDisagree', what: `${low} stands without ${high}.`, mend }))
      continue
    }
    const meets = low.startsWith('run.') ? lower.value <= upper.value : lower.value < upper.value
    if (meets) continue
    problems.push(
      setupProblem(lower.place, {
        kind: 'valuesDisagree',
        what: `${low} is ${printExact(lower.value, dimension)}, but ${high} is ${printExact(upper.value, dimension)}.`,
        mend: `Correct one of the two: ${why}.`,
      }),
    )
  }
  return problems
}

function speedProblems({ values }: Gathered): Problem[] {
  const speed = values.get('run.slidingSpeed')
  if (speed === undefined || !values.has('run.angularVelocity')) return []
  return [
    setupProblem(speed.place, {
      kind: 'keysExcludeEachOther',
      what: 'run.slidingSpeed and run.angularVelocity say the same thing twice.',
      mend: 'Keep one of the two.',
    }),
  ]
}

/** Lists that only their own reader understands. */
function listProblems({ values }: Gathered): Problem[] {
  const lists = [
    { path: 'worn.scars', read: readScars },
    { path: 'worn.sections', read: readSections },
    { path: 'liquid.byTemperature', read: (text: string) => readViscosities(text, 'temperature') },
    { path: 'liquid.byRate', read: (text: string) => readViscosities(text, 'frequency') },
  ]
  return lists.flatMap(({ path, read }) => {
    const written = values.get(path)
    if (typeof written?.value !== 'string') return []
    return read(written.value).faults.map((fault) =>
      setupProblem(written.place, { kind: 'quantityUnreadable', ...fault }),
    )
  })
}

const comparisons: Readonly<Record<FixtureFault['must'], string>> = {
  exceed: 'more than',
  reach: 'at least',
  stayBelow: 'less than',
  notExceed: 'at most',
}

function fixtureProblems(gathered: Gathered): Problem[] {
  const kind = gathered.values.get('fixture.kind')
  const spoiled = gathered.problems.some(({ place }) => place.name?.startsWith('fixture') === true)
  if (kind === undefined || spoiled) return []
  const keys = fixtureKeys.variants[String(kind.value)].keys
  const seen = new Set<string>()
  const problems: Problem[] = []
  for (const fault of fixtureFaults(assembleFixture(gathered))) {
    const key = keys[fault.key]
    if (seen.has(fault.key) || key?.is !== 'quantity') continue
    seen.add(fault.key)
    const { place } = gathered.values.get(`fixture.${fault.key}`) ?? kind
    const problem: { kind: SetupProblemKind; what: string; mend: string } = {
      kind: 'fixtureImpossible',
      what: `fixture.${fault.key} is ${printExact(fault.value, key.dimension)}, but ${fault.because}.`,
      mend: `Write ${comparisons[fault.must]} ${printExact(Number(fault.limit.toPrecision(6)), key.dimension)}, or correct the values around it.`,
    }
    problems.push(setupProblem(place, problem))
  }
  return problems
}
