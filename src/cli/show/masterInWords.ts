import type { MasterOfFiles } from '../../bench/master/index.ts'
import { herseyDefinitions } from '../../core/film/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import type { Interval } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { characterPlot } from './characterPlot.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

/** The master curve for people: liquids with their shifts, the points, and what they say together. */
export function masterInWords(
  { axis, liquids, fit, taken, sentences, remarks }: MasterOfFiles,
  screen: Screen,
): string {
  const width = Math.min(screen.width, 110)
  const title = (text: string): string => painted(screen, text, 'strong')
  const say = (text: string): string => wrap(text, width, { indent: '  ' })
  const { formula, unit } = herseyDefinitions[axis]
  const points = liquids.flatMap(({ points: own }) =>
    own.map(({ hersey, friction }) => ({ speed: hersey, friction, trusted: true })),
  )
  const plot = characterPlot(
    {
      points,
      line: fit.curve.map(({ hersey, friction }) => ({ speed: hersey, friction })),
      speedUnit: unit === '' ? '1' : unit,
      along: formula,
    },
    { width: Math.min(width, 78), rows: 14, unicode: screen.unicode },
  )
  const range = ({ value, low, high }: Interval): string =>
    `${value.toPrecision(3)} (${low.toPrecision(3)} to ${high.toPrecision(3)})`
  const { shifts } = fit
  const column = (head: string, unitOf: string, cells: readonly string[]) =>
    ({ head, unit: unitOf, align: 'left', cells }) as const
  const table = textTable([
    column(
      'liquid',
      '',
      shifts.map(({ name }) => name),
    ),
    column(
      'points',
      '',
      shifts.map((one) => String(one.points)),
    ),
    column(
      'viscosity',
      '',
      shifts.map(({ viscosity }) => printQuantity(viscosity, 'viscosity', { digits: 3 })),
    ),
    column(
      'beyond viscosity (95 %)',
      'factor on η',
      shifts.map(({ beyond }, i) => (i === 0 ? 'reference' : range(beyond))),
    ),
    column(
      'with unsure η',
      '',
      shifts.map(({ beyondWithViscosity: both }, i) => (i === 0 ? '' : range(both))),
    ),
    column(
      'off the curve',
      '%',
      shifts.map(({ level }) => (100 * level.value).toFixed(1)),
    ),
  ])
  const sections = [
    `${title('Liquids')}\n${table}`,
    plot === undefined ? '' : `${title('Friction coefficient')}\n${plot}`,
    `${title('Master curve')}\n${sentences.map(say).join('\n')}`,
    ...remarks.map(({ sentence, next }) => say(`${sentence} ${next}`)),
    painted(screen, say(taken.join(' ')), 'quiet'),
  ]
  return `${sections.filter((section) => section !== '').join('\n\n')}\n`
}
