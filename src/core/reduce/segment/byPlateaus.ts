import type { Stretch } from './byStepColumn.ts'

/**
 * Finds stretches of held speed. A row is steady when the speed over the rows around it stays within `tolerance`
 * of their mean; steady runs of at least `shortest` rows are plateaus, neighbours at one level are one plateau, and
 * the transient before a plateau belongs to it (it is what the cut removes later).
 *
 * @param speed angular velocity of every row, rad/s
 * @returns the plateaus in order, and the share of rows that lie on one
 */
export function byPlateaus(
  speed: Float64Array,
  tolerance: number,
  shortest: number,
): { stretches: Stretch[]; share: number } {
  const runs = joined(steadyRuns(speed, tolerance, shortest), speed, tolerance)
  const stretches = runs.map(
    (run, i): Stretch => ({
      number: i + 1,
      from: i === 0 ? 0 : runs[i - 1].to,
      to: i === runs.length - 1 ? speed.length : run.to,
    }),
  )
  const steady = runs.reduce((sum, run) => sum + run.to - run.from, 0)
  return { stretches, share: speed.length === 0 ? 0 : steady / speed.length }
}

interface Run {
  readonly from: number
  to: number
}

const halfWidth = 2

function steadyRuns(speed: Float64Array, tolerance: number, shortest: number): Run[] {
  const runs: Run[] = []
  let open: Run | undefined
  const close = () => {
    if (open !== undefined && open.to - open.from >= shortest) runs.push(open)
    open = undefined
  }
  for (let i = 0; i < speed.length; i++) {
    if (!steadyAt(speed, i, tolerance)) {
      close()
      continue
    }
    if (open !== undefined && !near(speed[i], meanOf(speed, open), 2 * tolerance)) close()
    open ??= { from: i, to: i }
    open.to = i + 1
  }
  close()
  return runs
}

function steadyAt(speed: Float64Array, at: number, tolerance: number): boolean {
  const from = Math.max(0, at - halfWidth)
  const to = Math.min(speed.length, at + halfWidth + 1)
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (let i = from; i < to; i++) {
    low = Math.min(low, speed[i])
    high = Math.max(high, speed[i])
  }
  return high - low <= tolerance * Math.max(Math.abs(low), Math.abs(high))
}

/** Two runs at one level with a short break between them are one plateau. */
function joined(runs: Run[], speed: Float64Array, tolerance: number): Run[] {
  const out: Run[] = []
  for (const run of runs) {
    const last = out.at(-1)
    if (last !== undefined && near(meanOf(speed, last), meanOf(speed, run), tolerance)) last.to = run.to
    else out.push({ ...run })
  }
  return out
}

const near = (a: number, b: number, tolerance: number): boolean =>
  Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b))

/** Mean speed of the last rows of a run, where it has settled most. */
function meanOf(speed: Float64Array, run: Run): number {
  const from = Math.max(run.from, run.to - 20)
  let sum = 0
  for (let i = from; i < run.to; i++) sum += speed[i]
  return sum / (run.to - from)
}
