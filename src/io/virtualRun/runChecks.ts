import { fixtureGeometry, rotationFromSpeed } from '../../core/fixture/index.ts'
import { printExact } from '../../core/quantity/index.ts'
import { sheetSteps, type VirtualRun } from '../../core/rig/index.ts'
import type { Place, Problem } from '../../core/terms/index.ts'
import { type SetupProblemKind, setupProblem } from '../setup/setupProblem.ts'
import { listedSpeeds } from './listedSpeeds.ts'
import type { RunValues } from './runValues.ts'

/** More rows than this fill a disk before anybody has a use for them. */
const mostRows = 2e8

/** What no key can tell alone. `whole` is the place of what is missing. */
export function runChecks(values: RunValues, whole: Place): readonly Problem[] {
  return [...missing(values, whole), ...speedProblems(values), ...stretchProblems(values), ...tableProblems(values)]
}

function missing(values: RunValues, whole: Place): Problem[] {
  const problems: Problem[] = []
  const lacks = (name: string, what: string, mend: string) =>
    problems.push(setupProblem({ ...whole, name }, { kind: 'keyMissing', what, mend }))
  if (!values.has('run.axialForce')) {
    lacks('run.axialForce', 'run.axialForce is missing.', 'Add "axialForce: 5 N" under "run:".')
  }
  const stepped = values.has('speeds.kind') && values.text('speeds.kind') !== 'ramp'
  if (stepped && !values.has('sheet.dwell') && !values.has('sheet.turns')) {
    lacks('sheet.dwell', 'sheet says neither dwell nor turns.', 'Add "dwell: 10 s" or "turns: 1" under "sheet:".')
  }
  return problems
}

/** A pair of keys of which the second must not be smaller. */
function inOrder(values: RunValues, low: string, high: string): Problem[] {
  if (!values.has(low) || !values.has(high) || values.number(low) <= values.number(high)) return []
  const what = `${low} is larger than ${high}.`
  return [complaint(values, low, { kind: 'valuesDisagree', what, mend: 'Correct one of the two.' })]
}

function speedProblems(values: RunValues): Problem[] {
  const problems = inOrder(values, 'speeds.slowest', 'speeds.fastest')
  if (values.has('sheet.dwell') && values.has('sheet.turns')) {
    const what = 'sheet.dwell and sheet.turns both say how long a step lasts.'
    problems.push(
      complaint(values, 'sheet.turns', { kind: 'keysExcludeEachOther', what, mend: 'Keep one of the two.' }),
    )
  }
  problems.push(...inOrder(values, 'sheet.leastDwell', 'sheet.mostDwell'))
  if (!values.has('speeds.speeds')) return problems
  const { faults } = listedSpeeds(values.text('speeds.speeds'))
  return [
    ...problems,
    ...faults.map((fault) => complaint(values, 'speeds.speeds', { kind: 'quantityUnreadable', ...fault })),
  ]
}

const stretchProblems = (values: RunValues): Problem[] => [
  ...inOrder(values, 'disturbances.lostContact.from', 'disturbances.lostContact.to'),
  ...inOrder(values, 'disturbances.wornSpot.from', 'disturbances.wornSpot.to'),
  ...twiceSaid(values, 'disturbances.stickSlip', 'disturbances.springStickSlip.staticExcess'),
  ...twiceSaid(values, 'disturbances.wear', 'disturbances.archardWear.specificRate'),
  ...shaftProblems(values),
]

/** Two laws of one disturbance. */
function twiceSaid(values: RunValues, first: string, second: string): Problem[] {
  if (!values.has(first) || !values.has(second)) return []
  const what = `${first} and ${second} say the same thing twice.`
  return [complaint(values, second, { kind: 'keysExcludeEachOther', what, mend: 'Keep one of the two.' })]
}

/** A shaft swings by its stiffness and inertia alone. */
function shaftProblems(values: RunValues): Problem[] {
  if (!values.has('disturbances.springStickSlip')) return []
  return ['rig.torsionalStiffness', 'rig.inertia']
    .filter((key) => !values.has(key))
    .map((key) =>
      complaint(values, 'disturbances.springStickSlip.staticExcess', {
        kind: 'keyMissing',
        what: `springStickSlip needs ${key}.`,
        mend: `Add "${key.slice(4)}" under "rig:".`,
      }),
    )
}

function tableProblems(values: RunValues): Problem[] {
  const comma =
    values.text('table.separator', 'comma') === 'comma' && values.text('table.decimalMark', 'point') === 'comma'
  if (!comma) return []
  const what = 'Columns and decimals would both be marked by commas.'
  const mend = 'Write "separator: semicolon", or take decimalMark out.'
  return [complaint(values, 'table.decimalMark', { kind: 'valuesDisagree', what, mend })]
}

/** What shows once the run sheet is worked out. */
export function sheetChecks(run: VirtualRun, values: RunValues): readonly Problem[] {
  const geometry = fixtureGeometry(run.fixture)
  const { speeds } = run.sheet
  const fastest = speeds.kind === 'list' ? Math.max(...speeds.speeds.map(Math.abs)) : speeds.fastest
  const rotation = rotationFromSpeed(geometry, fastest)
  const problems: Problem[] = []
  const most = values.maybe('rig.angularVelocity.ceiling') ?? Number.POSITIVE_INFINITY
  if (rotation > most) {
    const key = speeds.kind === 'list' ? 'speeds.speeds' : 'speeds.fastest'
    const what = `The fastest speed needs ${said(rotation)}, the rig reaches ${said(most)}.`
    const mend = `Write at most ${printExact(rounded(most * geometry.lever), 'velocity')}.`
    problems.push(complaint(values, key, { kind: 'valuesDisagree', what, mend }))
  }
  const steps = sheetSteps(run.sheet, geometry.lever)
  const rows = steps[steps.length - 1].to
  if (!(rows <= mostRows)) {
    const what = `The record would have ${rows} rows, at most ${mostRows} are made.`
    const mend = 'Write a smaller sampling rate or a shorter dwell.'
    problems.push(complaint(values, 'sheet.samplingRate', { kind: 'valueOutOfRange', what, mend }))
  }
  const lost = values.maybe('disturbances.lostContact.step')
  if (lost !== undefined && !steps.some(({ number, kind }) => number === lost && kind === 'slide')) {
    const slides = steps.filter(({ kind }) => kind === 'slide').map(({ number }) => number)
    const what = `Step ${lost} is none in which the contact slides.`
    const mend = `Write a step from ${slides[0]} to ${slides[slides.length - 1]}.`
    problems.push(complaint(values, 'disturbances.lostContact.step', { kind: 'valueOutOfRange', what, mend }))
  }
  return problems
}

const rounded = (value: number): number => Number(value.toPrecision(3))

const said = (rotation: number): string => printExact(rounded(rotation), 'angularVelocity')

const complaint = (
  values: RunValues,
  key: string,
  words: { readonly kind: SetupProblemKind; readonly what: string; readonly mend: string },
): Problem => setupProblem(values.place(key), words)
