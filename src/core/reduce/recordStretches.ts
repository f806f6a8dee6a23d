import { fixtureGeometry } from '../fixture/index.ts'
import { median } from '../numeric/index.ts'
import type { Channels, Newton, Point, RecordStretch, Reduction, Setup, Step, StretchKind } from '../terms/index.ts'
import { reduceDefaults } from './defaults.ts'
import { shortestLoss } from './remarks/contactLost.ts'
import { type SignalSource, signalSource } from './signals.ts'
import { valueAt } from './zero/corrections.ts'

/** What became of every row of a record, as stretches of time in their order: which were accepted, which left out, and why. */
export function recordStretches(channels: Channels, setup: Setup, reduction: Reduction): readonly RecordStretch[] {
  const source = signalSource(channels, setup, fixtureGeometry(setup.fixture))
  const { contactShare } = { ...reduceDefaults, ...setup.options }
  const limit = source.hasForce ? contactShare * loadOf(reduction, setup) : Number.NEGATIVE_INFINITY
  const points = new Map(reduction.points.map((point) => [point.rows.from, point]))
  return reduction.steps
    .flatMap((step) => kindsOf(step, points.get(step.from), lossesOf(step, source, { limit, reduction })))
    .filter(({ from, to }) => to > from)
    .map(({ kind, step, from, to }) => {
      const [begin] = source.time(from, from + 1)
      // A stretch ends where the next one begins, so that no gap opens between them.
      const [end] = to < source.rows ? source.time(to, to + 1) : source.time(to - 1, to)
      return { kind, step, from: begin, to: end }
    })
}

/** Axial force that counts as the load: commanded, or the median of what the points carry where nobody said. */
export const loadOf = ({ points }: Reduction, { run }: Setup): Newton =>
  run.axialForce ?? (points.length === 0 ? Number.NaN : median(points.map(({ axialForce }) => axialForce)))

interface Rows {
  readonly from: number
  readonly to: number
}

/** Runs of rows of a step in which the force, less its zero, stays under the share of the load. */
function lossesOf(step: Step, source: SignalSource, by: { limit: Newton; reduction: Reduction }): readonly Rows[] {
  if (step.kind === 'blank' || by.limit === Number.NEGATIVE_INFINITY) return []
  const losses: Rows[] = []
  let begin = step.from
  const close = (row: number): void => {
    if (row - begin >= shortestLoss) losses.push({ from: begin, to: row })
    begin = row + 1
  }
  for (const { from, rows, axialForce, time } of source.pages(step.from, step.to)) {
    for (let row = 0; row < rows; row++) {
      const lost = axialForce[row] - valueAt(by.reduction.forceZero, time[row]) < by.limit
      if (!lost) close(from + row)
    }
  }
  close(step.to)
  return losses
}

type RowStretch = Rows & { readonly kind: StretchKind; readonly step: number }

function kindsOf(step: Step, point: Point | undefined, losses: readonly Rows[]): readonly RowStretch[] {
  const part = (kind: StretchKind, from: number, to: number): RowStretch => ({ kind, step: step.number, from, to })
  if (step.kind === 'blank') return [part('blank', step.from, step.to)]
  const kind = point?.trusted === true ? 'accepted' : 'notFitted'
  const kept = point?.rows.kept ?? step.from
  const between = (from: number, to: number): readonly RowStretch[] => [
    part('warmUp', from, Math.min(kept, to)),
    part(kind, Math.max(kept, from), to),
  ]
  let from = step.from
  const parts: RowStretch[] = []
  for (const loss of losses) {
    parts.push(...between(from, loss.from), part('outOfContact', loss.from, loss.to))
    from = loss.to
  }
  return [...parts, ...between(from, step.to)]
}
