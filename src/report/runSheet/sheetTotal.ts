import { printQuantity } from '../../core/quantity/index.ts'
import type { OrderedSheet } from '../../core/terms/index.ts'

/** Time and distance of a whole sheet in one sentence. */
export const sheetTotal = ({ totals }: OrderedSheet): string =>
  `About ${hours(totals.time)} and ${printQuantity(totals.distance, 'length', { digits: 2 })} of sliding, all together.`

/** Minutes under two hours, hours above. */
const hours = (seconds: number): string =>
  seconds < 7200 ? `${Math.ceil(seconds / 60)} min` : `${Number((seconds / 3600).toPrecision(2))} h`
