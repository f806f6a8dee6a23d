import { printQuantity } from '../core/quantity/index.ts'
import type { PascalSecond } from '../core/terms/index.ts'
import { type ChartMark, type ChartPanel, tones } from './chart/chartData.ts'
import { chartFigure } from './chart/chartFigure.ts'
import type { Markup } from './markup.ts'
import type { SheetOptions, Words } from './sheet.ts'

/** One liquid on the common axis. */
export interface MasterFigureLiquid {
  readonly name: string
  readonly viscosity: PascalSecond
  readonly points: readonly { readonly hersey: number; readonly friction: number; readonly ownUncertainty: number }[]
}

/** What the master figure shows. */
export interface MasterFigureData extends Words {
  /** How the Hersey number is defined; papers mean several. */
  readonly axis: { readonly formula: string; readonly unit: string }
  readonly liquids: readonly MasterFigureLiquid[]
  readonly curve: readonly { readonly hersey: number; readonly friction: number }[]
  readonly sentence: string
}

/** All liquids over one axis with their common curve, and below how far each point lies from it. */
export function masterFigure(data: MasterFigureData, options: Partial<SheetOptions> = {}): Markup {
  const panels = data.curve.length > 1 ? [curvePanel(data), residualPanel(data)] : [curvePanel(data)]
  return chartFigure({ ...data, panels, words: data.sentence }, { id: 'master', ...options })
}

const xAxis = ({ axis }: MasterFigureData): ChartPanel['x'] => ({
  title: `Hersey number ${axis.formula}${axis.unit === '' ? ' (1)' : ` (${axis.unit})`}`,
  log: true,
})

/** Six signs are told apart; further liquids begin anew. */
const toneOf = (index: number) => tones[index % 6]

function curvePanel(data: MasterFigureData): ChartPanel {
  return {
    x: xAxis(data),
    y: { title: 'friction coefficient µ (1)', log: true },
    height: 280,
    marks: [
      { kind: 'line', tone: 'quiet', items: data.curve.map(({ hersey, friction }) => ({ x: hersey, y: friction })) },
      ...data.liquids.map(
        ({ name, viscosity, points }, index): ChartMark => ({
          kind: 'points',
          tone: toneOf(index),
          hollow: index % 2 === 1,
          items: points.map(({ hersey, friction, ownUncertainty }) => ({
            x: hersey,
            y: friction,
            low: friction - 1.96 * ownUncertainty,
            high: friction + 1.96 * ownUncertainty,
            words: `${name}: ${Number(friction.toPrecision(3))} at ${Number(hersey.toPrecision(3))}`,
          })),
          label: `${name}, ${printQuantity(viscosity, 'viscosity', { digits: 3 })}`,
        }),
      ),
    ],
  }
}

function residualPanel(data: MasterFigureData): ChartPanel {
  return {
    x: xAxis(data),
    y: { title: 'off the curve (%)', log: false },
    height: 120,
    marks: [
      { kind: 'level', at: 0, words: '' },
      ...data.liquids.map(
        ({ points }, index): ChartMark => ({
          kind: 'points',
          tone: toneOf(index),
          hollow: index % 2 === 1,
          items: points.map(({ hersey, friction }) => ({
            x: hersey,
            y: 100 * (friction / frictionOn(data.curve, hersey) - 1),
          })),
        }),
      ),
    ],
  }
}

/** Straight between the places of the curve, both on logarithms. */
function frictionOn(curve: MasterFigureData['curve'], hersey: number): number {
  const after = curve.findIndex((place) => place.hersey >= hersey)
  if (after <= 0) return (after === 0 ? curve[0] : curve[curve.length - 1]).friction
  const [a, b] = [curve[after - 1], curve[after]]
  const share = Math.log(hersey / a.hersey) / Math.log(b.hersey / a.hersey)
  return a.friction * (b.friction / a.friction) ** share
}
