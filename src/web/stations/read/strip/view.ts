import type { Second } from '../../../../core/terms/index.ts'

/** The stretch of a record that is in sight. */
export interface View {
  readonly from: Second
  readonly to: Second
}

export const span = ({ from, to }: View): Second => to - from

/** The view with `factor` times its span (under 1: closer), the time `at` staying where it is; held to the whole record. */
export function zoomed(
  view: View,
  { factor, at }: { readonly factor: number; readonly at: Second },
  { whole, shortest }: Limits,
): View {
  const wanted = Math.min(span(whole), Math.max(shortest, factor * span(view)))
  const share = span(view) > 0 ? (at - view.from) / span(view) : 0.5
  const from = at - share * wanted
  return held({ from, to: from + wanted }, whole)
}

/** The view moved by so many seconds, as far as the record reaches. */
export const panned = (view: View, by: Second, { whole }: Pick<Limits, 'whole'>): View =>
  held({ from: view.from + by, to: view.to + by }, whole)

/** A stretch with a margin on either side. */
export function around(stretch: View, share: number, { whole, shortest }: Limits): View {
  const margin = Math.max(share * span(stretch), (shortest - span(stretch)) / 2)
  return held({ from: stretch.from - margin, to: stretch.to + margin }, whole)
}

/** The whole record, and the shortest stretch that is worth looking at. */
export interface Limits {
  readonly whole: View
  readonly shortest: Second
}

/** Pushed back into the record without a change of span, unless the record is shorter. */
function held({ from, to }: View, whole: View): View {
  const wide = to - from
  if (!(wide < span(whole))) return whole
  const begin = Math.min(Math.max(from, whole.from), whole.to - wide)
  return { from: begin, to: begin + wide }
}
