import type { Bounded } from '../core/terms/index.ts'
import { chartFigure } from './chart/chartFigure.ts'
import type { Markup } from './markup.ts'
import type { SheetOptions, Words } from './sheet.ts'

/** What the figure of run-in shows: changes in their order, as shares of friction. */
export interface RunInFigureData extends Words {
  readonly changes: readonly {
    readonly from: string
    readonly to: string
    readonly mean: Bounded
    readonly largest: Bounded
  }[]
  readonly margin: number
  readonly sentence: string
}

/** Change from sweep to sweep with its interval, on the mean and where it is largest, between the margins that matter. */
export function runInFigure(data: RunInFigureData, options: Partial<SheetOptions> = {}): Markup {
  const { changes, margin, sentence, ...words } = data
  const percent = (value: number | null, otherwise: number): number => 100 * (value ?? otherwise)
  const items = (pick: (change: (typeof changes)[number]) => Bounded, shift: number) =>
    changes.map((change, i) => {
      const { value, low, high } = pick(change)
      return {
        x: i + 1 + shift,
        y: 100 * value,
        low: percent(low, value),
        high: percent(high, value),
        words: `${change.from} to ${change.to}: ${Number((100 * value).toPrecision(2))} %`,
      }
    })
  return chartFigure(
    {
      ...words,
      caption: sentence,
      words: sentence,
      panels: [
        {
          x: { title: 'change, in the order of measuring', log: false, range: [0.5, changes.length + 0.5] },
          y: { title: 'change of friction (%)', log: false },
          height: 220,
          marks: [
            { kind: 'level', at: 100 * margin, words: `margin ±${Number((100 * margin).toPrecision(2))} %` },
            { kind: 'level', at: 0, words: 'no change' },
            { kind: 'level', at: -100 * margin, words: '' },
            {
              kind: 'points',
              tone: 'accent',
              items: items(({ mean }) => mean, -0.06),
              label: 'mean over the speeds, 95 %',
            },
            {
              kind: 'points',
              tone: 'orange',
              items: items(({ largest }) => largest, 0.06),
              label: 'where it is largest, 95 %',
            },
          ],
        },
      ],
    },
    { id: 'run-in', ...options },
  )
}
