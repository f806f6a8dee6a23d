import { printQuantity } from '../quantity/index.ts'
import type { Remark, Step } from '../terms/index.ts'
import { done, failed, type MovedWindow, type Outcome, type Point, type Problem } from '../terms/index.ts'
import type { SignalSource } from './signals.ts'

/** A step whose window a person moved. */
export interface MovedStep {
  /** First row of the step as the program found it. */
  readonly begin: number
  /** The step with the rows of the window. */
  readonly step: Step
  readonly remark: Remark
}

/** Fewest rows that a window may hold. */
const fewestRows = 10

/**
 * Finds the steps behind moved windows. `steps` and `points` are what the program found by itself: a window moves within
 * its step, and the remark says from where. All windows that fit no step come back as problems.
 */
export function movedSteps(
  windows: readonly MovedWindow[],
  { steps, points }: { readonly steps: readonly Step[]; readonly points: readonly Point[] },
  source: SignalSource,
): Outcome<readonly MovedStep[]> {
  const moved: MovedStep[] = []
  const problems: Problem[] = []
  for (const window of windows) {
    const slides = steps.filter(({ number, kind }) => number === window.step && kind === 'slide')
    const found = slides
      .map((step) => ({ step, rows: rowsWithin(step, window, source) }))
      .sort((a, b) => b.rows.to - b.rows.from - (a.rows.to - a.rows.from))[0]
    if (found === undefined) problems.push(withoutStep(window))
    else if (!(found.rows.to - found.rows.from >= fewestRows)) problems.push(tooShort(window, found, source))
    else if (moved.some(({ begin }) => begin === found.step.from)) problems.push(twice(window))
    else moved.push(movedStep(found.step, found.rows, { points, source }))
  }
  return problems.length > 0 ? failed(...problems) : done(moved)
}

interface Rows {
  readonly from: number
  readonly to: number
}

/** Rows of a step whose time lies in the window. */
function rowsWithin({ from, to }: Step, window: MovedWindow, source: SignalSource): Rows {
  const time = source.time(from, to)
  let first = 0
  while (first < time.length && !(time[first] >= window.from)) first++
  let end = time.length
  while (end > first && !(time[end - 1] <= window.to)) end--
  return { from: from + first, to: from + end }
}

function movedStep(
  step: Step,
  rows: Rows,
  { points, source }: { readonly points: readonly Point[]; readonly source: SignalSource },
): MovedStep {
  const kept = points.find((point) => point.rows.from === step.from)?.rows.kept ?? step.from
  const at = (row: number): number => source.time(row, row + 1)[0]
  const [from, to] = [at(rows.from), at(rows.to - 1)]
  const [oldFrom, oldTo] = [at(Math.min(kept, step.to - 1)), at(step.to - 1)]
  return {
    begin: step.from,
    step: { ...step, ...rows },
    remark: {
      kind: 'windowMoved',
      seen: from,
      limit: oldFrom,
      unit: 's',
      step: step.number,
      sentence: `Somebody moved the window of this step: ${inWords(from, to)} counts, where the program took ${inWords(oldFrom, oldTo)}.`,
      next: 'The history of the record says who moved it and why; moving it back gives the earlier value again.',
    },
  }
}

const inWords = (from: number, to: number): string =>
  `${printQuantity(from, 'time', { digits: 4 })} to ${printQuantity(to, 'time', { digits: 4 })}`

const problem = (kind: string, { step, from, to }: MovedWindow, words: Pick<Problem, 'what' | 'mend'>): Problem => ({
  kind,
  class: 'badInput',
  place: { name: `window of step ${step}`, cell: `${from} to ${to} s` },
  ...words,
})

const withoutStep = (window: MovedWindow): Problem =>
  problem('windowWithoutStep', window, {
    what: `The record has no step ${window.step} that slides.`,
    mend: 'Name a step that the reduction of the record lists.',
  })

function tooShort(
  window: MovedWindow,
  { step, rows }: { readonly step: Step; readonly rows: Rows },
  source: SignalSource,
): Problem {
  const [begin] = source.time(step.from, step.from + 1)
  const [end] = source.time(step.to - 1, step.to)
  return problem('windowTooShort', window, {
    what: `The window holds ${Math.max(0, rows.to - rows.from)} rows of its step; fewer than ${fewestRows} say nothing.`,
    mend: `Let it lie within its step, ${inWords(begin, end)}, and be longer.`,
  })
}

const twice = (window: MovedWindow): Problem =>
  problem('windowTwice', window, {
    what: `The window of step ${window.step} is moved twice.`,
    mend: 'Leave one of the two.',
  })
