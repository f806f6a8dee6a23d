import { printQuantity } from '../../../core/quantity/index.ts'
import { schemaVersion } from '../../../core/terms/index.ts'
import { controlChartFigure, type PaletteName } from '../../../figure/index.ts'
import type { RigWatch } from './watchRig.ts'

/** Watches for machines, in SI. */
export const watchText = (watches: readonly RigWatch[]): string =>
  `${JSON.stringify({ schemaVersion, watches }, null, 2)}\n`

/** A watch as a control chart; undefined while it has too few values. */
export function drawWatch({ watch, title, series, alarms }: RigWatch, palette: PaletteName): string | undefined {
  if (series === null) return undefined
  const { chart, values, ewma } = series
  return controlChartFigure(
    {
      title: `Check standard ${title} at ${printQuantity(watch.at, 'velocity', { digits: 3 })}`,
      caption: `${values.length} measurements, ${values[0].label} to ${values[values.length - 1].label}`,
      quantity: 'friction coefficient (1)',
      values: values.map(({ label, friction }) => ({ label, value: friction })),
      ...{ centre: chart.centre, lower: chart.lower, upper: chart.upper },
      ...{ movingRanges: chart.movingRanges, rangeUpper: chart.rangeUpper, baseline: chart.baseline, ewma },
      alarms: alarms.map(({ at, from, words, answer }) => ({
        ...{ at, from, words },
        state: answer === null ? 'open' : 'answered',
      })),
    },
    { palette },
  )
}
