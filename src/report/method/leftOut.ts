import { grouped, percent } from '../words/printed.ts'
import type { Done } from './done.ts'

/** Rows that were cut at the head of the steps, and steps that the curve leaves out. */
export function leftOut({ reduction, options }: Done): string {
  const { points } = reduction
  if (points.length === 0) return ''
  if (reduction.segmentation === 'ramp') return 'The bins of the ramp were used whole, with no warm-up cut off.'
  const all = points.reduce((sum, { rows }) => sum + rows.to - rows.from, 0)
  const cut = points.reduce((sum, { rows }) => sum + rows.kept - rows.from, 0)
  const most = Math.max(...points.map(({ rows }) => (rows.kept - rows.from) / Math.max(1, rows.to - rows.from)))
  const rule =
    `At the head of each step the rows before the speed had come to within ${percent(options.settleTolerance)} of its target for good were left out, ` +
    'and after them the warm-up that the marginal standard error rule on means of five (MSER-5; White 1997) gives, where some of it clearly differs from the rest or the record is too short to tell.'
  return cut === 0
    ? `${rule} Nothing had to be cut.`
    : `${rule} This took ${grouped(cut)} of ${grouped(all)} rows (${percent(cut / all)}), at most ${percent(most)} of one step.`
}
