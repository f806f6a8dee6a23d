import { printQuantity } from '../core/quantity/index.ts'
import type { Breakaway, Start } from '../core/terms/index.ts'
import type { ChartMark, ChartPanel, ChartPoint } from './chart/chartData.ts'
import { chartFigure } from './chart/chartFigure.ts'
import type { Markup } from './markup.ts'
import type { SheetOptions, Words } from './sheet.ts'

/** What the figure of breakaway shows. */
export interface BreakawayFigureData extends Words {
  readonly breakaway: Breakaway
}

/** Torque against angle before motion, all starts over each other; below it static friction against the time at rest. */
export function breakawayFigure(
  { breakaway, ...words }: BreakawayFigureData,
  options: Partial<SheetOptions> = {},
): Markup {
  const panels = [twistPanel(breakaway), agePanel(breakaway)].filter((panel) => panel !== undefined)
  const moved = breakaway.starts.filter((start) => start.moved).length
  const told = [
    `${moved} of ${breakaway.starts.length} starts broke away.`,
    breakaway.ageing?.sentence ?? breakaway.ageingMissing ?? '',
  ].join(' ')
  return chartFigure({ ...words, panels, words: told }, { id: 'breakaway', ...options })
}

const milli = 1000

/** The axis ends a little behind the largest angle at which a contact broke away: what it slid then is not the question. */
function twistPanel({ starts }: Breakaway): ChartPanel {
  const broke = starts.flatMap(({ at }) => (at === null ? [] : [at.angle]))
  const standing = starts.filter(({ moved }) => !moved).flatMap(({ trace }) => trace.map(({ angle }) => angle))
  const most = 1.5 * Math.max(1e-9, ...broke, ...standing)
  const lines = starts.map(
    (start): ChartMark => ({
      kind: 'line',
      tone: start.moved ? 'ink' : 'orange',
      items: upTo(start.trace, most).map(({ angle, torque }) => ({ x: angle * milli, y: torque * milli })),
    }),
  )
  const points = starts.flatMap(({ at, step, staticFriction }): ChartPoint[] =>
    at === null
      ? []
      : [
          {
            x: at.angle * milli,
            y: at.torque * milli,
            words: `step ${step}: broke away at µ = ${three(staticFriction?.value)}`,
          },
        ],
  )
  return {
    x: { title: 'angle since torque began to rise (mrad)', log: false, range: [0, most * milli] },
    y: { title: 'torque (mN·m)', log: false },
    height: 220,
    marks: [
      ...lines,
      { kind: 'points', tone: 'red', items: points, label: points.length > 0 ? 'broke away' : undefined },
    ],
  }
}

/** Rows up to the edge of the plot, and the way there from the last one inside. */
function upTo(trace: Start['trace'], most: number): Start['trace'] {
  const past = trace.findIndex(({ angle }) => angle > most)
  return past < 0 ? trace : [...trace.slice(0, past), { ...trace[past], angle: most }]
}

const three = (value: number | undefined): string => (value === undefined ? '–' : String(Number(value.toPrecision(3))))

function agePanel({ starts, ageing }: Breakaway): ChartPanel | undefined {
  const aged = starts.filter(
    (start): start is Start & { staticFriction: NonNullable<Start['staticFriction']> } =>
      start.staticFriction !== null && start.dwell > 0,
  )
  if (aged.length === 0) return undefined
  const items = aged.map(({ staticFriction: { value, low, high }, dwell, step }) => ({
    x: dwell,
    y: value,
    ...(low === null || high === null ? {} : { low, high }),
    words: `step ${step}: µ = ${three(value)} after ${printQuantity(dwell, 'time', { digits: 3 })} at rest`,
  }))
  const dwells = aged.map(({ dwell }) => dwell)
  const range: [number, number] = [Math.min(...dwells) / 1.3, Math.max(...dwells) * 1.3]
  const law: ChartMark[] =
    ageing === null
      ? []
      : [
          {
            kind: 'line',
            tone: 'accent',
            items: Array.from({ length: 60 }, (_, i) => {
              const x = range[0] * (range[1] / range[0]) ** (i / 59)
              return { x, y: ageing.level.value + ageing.slope.value * Math.log1p(x / ageing.time.value) }
            }),
            label: 'µ₀ + β ln(1 + t/τ)',
          },
        ]
  return {
    x: { title: 'time at rest (s)', log: true, range },
    y: { title: 'static friction µ (1)', log: false },
    height: 190,
    marks: [...law, { kind: 'points', tone: 'ink', items, label: 'a start, own 95 %' }],
  }
}
