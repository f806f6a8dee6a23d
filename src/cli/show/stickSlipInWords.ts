import type { StickSlipOfFile } from '../../bench/stickSlip/index.ts'
import { fromSi, printWithUncertainty } from '../../core/quantity/index.ts'
import { type StepVibration, vibrationWords } from '../../core/reduce/questions/index.ts'
import type { Interval } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { characterPlot } from './characterPlot.ts'
import { speedUnitOf } from './pointTable.ts'
import { headLine } from './reductionInWords.ts'
import { type TableColumn, textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

/** Stick–slip for people: a line a step, the swing against speed, and what it means. */
export function stickSlipInWords({ reduced, stickSlip }: StickSlipOfFile, screen: Screen): string {
  const width = Math.min(screen.width, 110)
  const { steps } = stickSlip
  const unit = speedUnitOf(reduced.reduction.points)
  const title = (text: string): string => painted(screen, text, 'strong')
  const points = steps.map(({ slidingSpeed, swing, verdict }) => ({
    speed: fromSi(slidingSpeed, unit),
    friction: Math.max(1e-4, swing) * 100,
    trusted: verdict !== 'stickSlip',
  }))
  const plot = characterPlot(
    { points, line: [], speedUnit: unit.text },
    { width: Math.min(width, 78), rows: 10, unicode: screen.unicode },
  )
  const columns: readonly TableColumn[] = [
    { head: 'step', unit: '', align: 'right', cells: steps.map(({ step }) => String(step)) },
    {
      head: 'speed',
      unit: unit.text,
      align: 'point',
      cells: steps.map((one) => short(fromSi(one.slidingSpeed, unit))),
    },
    { head: 'what it is', unit: '', align: 'left', cells: steps.map(({ verdict }) => vibrationWords[verdict]) },
    { head: 'swing', unit: '%', align: 'point', cells: steps.map(({ swing }) => (100 * swing).toFixed(1)) },
    { head: 'cycles', unit: '', align: 'right', cells: steps.map(({ numbers }) => String(numbers?.cycles ?? '–')) },
    { head: 'frequency', unit: 'Hz', align: 'point', cells: steps.map((one) => cell(one, 'frequency')) },
    { head: 'amplitude', unit: 'friction', align: 'point', cells: steps.map((one) => cell(one, 'amplitude')) },
    { head: 'sticks', unit: '% of the time', align: 'point', cells: steps.map((one) => cell(one, 'stickShare', 100)) },
  ]
  const told = stickSlip.sentences.map((sentence) => wrap(sentence, width, { indent: '  ' })).join('\n')
  const sections = [
    headLine(reduced, screen),
    `${title('Steps')}   ± is half of the 95 % interval\n${textTable(columns)}`,
    plot === undefined ? '' : `${title('Swing (% of friction)')}   o step   x stick–slip\n${plot}`,
    `${title('Stick–slip')}\n${told}`,
  ]
  return `${sections.filter((section) => section !== '').join('\n\n')}\n`
}

function cell(step: StepVibration, name: 'frequency' | 'amplitude' | 'stickShare', factor = 1): string {
  const found: Interval | undefined = step.numbers?.[name]
  if (found === undefined) return '–'
  const half = Math.max(found.high - found.value, found.value - found.low)
  return printWithUncertainty(factor * found.value, factor * half)
}

const short = (value: number): string => String(Number(value.toPrecision(4)))
