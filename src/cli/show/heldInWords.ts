import type { HeldRecord } from '../../bench/plan/index.ts'
import { printQuantity, printSteps } from '../../core/quantity/index.ts'
import { painted, type Screen } from '../screen.ts'
import { type TableColumn, textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

const percent = (value: number | undefined): string =>
  value === undefined ? 'none' : String(Number((100 * value).toPrecision(2)))

/** A record beside its plan: what was predicted and what came, step by step, and which assumption failed. */
export function heldInWords({ file, held }: HeldRecord, screen: Screen): string {
  const { points, failures, sentence } = held
  const column = (head: string, unit: string, cells: readonly string[]): TableColumn => ({
    head,
    unit,
    align: 'right',
    cells,
  })
  const table = textTable([
    column(
      'step',
      '',
      points.map(({ step }) => String(step)),
    ),
    column(
      'speed',
      '',
      points.map(({ slidingSpeed }) => printQuantity(slidingSpeed, 'velocity', { digits: 3 })),
    ),
    column(
      'friction',
      'expected',
      points.map(({ predicted }) => [predicted.low, predicted.high].map((one) => Number(one.toPrecision(2))).join('–')),
    ),
    column(
      'friction',
      'obtained',
      points.map(({ obtained }) => (obtained === null ? 'none' : String(Number(obtained.friction.toPrecision(3))))),
    ),
    column(
      'own',
      'predicted %',
      points.map(({ predicted }) => percent(predicted.own)),
    ),
    column(
      'own',
      'obtained %',
      points.map(({ obtained }) => percent(obtained?.own)),
    ),
    column(
      'in all',
      'predicted %',
      points.map(({ predicted }) => percent(predicted.total)),
    ),
    column(
      'in all',
      'obtained %',
      points.map(({ obtained }) => percent(obtained?.total)),
    ),
    {
      ...column(
        'failed',
        '',
        points.map(({ failed }) => failed.map((one) => words[one]).join(', ')),
      ),
      align: 'left',
    },
  ])
  const width = Math.min(screen.width, 110)
  const told = failures.map((failure) => `${words[failure.assumption]}, ${printSteps(failure.steps)}`)
  const lines = [sentence, ...(told.length > 0 ? [`Failed: ${told.join('; ')}.`] : [])]
  return `\n${painted(screen, `${file} held against its plan`, 'strong')}\n${points.length > 0 ? `${table}\n` : ''}${lines.map((line) => wrap(line, width, { indent: '  ' })).join('\n')}\n`
}

const words = {
  noise: 'noise',
  friction: 'friction',
  axialForce: 'load',
  turns: 'turns',
  steady: 'steadiness',
  trusted: 'value',
  speeds: 'speeds',
} as const
