import type { SeriesOfFiles } from '../../bench/questions/index.ts'
import { fromSi, printQuantity } from '../../core/quantity/index.ts'
import type { Series } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { characterPlot } from './characterPlot.ts'
import { foundRemarks } from './foundRemarks.ts'
import { intervalInWords } from './interval.ts'
import { speedUnitOf } from './pointTable.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

/** A series for people: its records, the law at every speed and over all, and what it means. */
export function seriesInWords({ records, series }: SeriesOfFiles, screen: Screen): string {
  const width = Math.min(screen.width, 110)
  const title = (text: string): string => painted(screen, text, 'strong')
  const unit = speedUnitOf(records.flatMap(({ reduction }) => reduction.points))
  const sections = [
    `${title('Records')}\n${memberTable(series)}`,
    plotOf(series, unit, screen),
    `${title(series.axis === 'load' ? 'Exponent a of F^(−a)' : 'Energy E of exp(E/RT)')}   95 % from the scatter between records\n${lawTable(series, unit)}`,
    series.axis === 'load'
      ? `${title('Friction force against load')}   an intercept is adhesion, or a wrong zero of the force\n${interceptTable(series, unit)}`
      : '',
    `${title('Law')}\n${lawSentences(series)
      .map((sentence) => wrap(sentence, width, { indent: '  ' }))
      .join('\n')}`,
    foundRemarks(series.remarks, screen, width),
  ]
  return `${sections.filter((section) => section !== '').join('\n\n')}\n`
}

type SpeedUnit = ReturnType<typeof speedUnitOf>

const memberTable = ({ members }: Series): string =>
  textTable([
    { head: 'record', unit: '', align: 'left', cells: members.map(({ name }) => name) },
    { head: 'axial force', unit: 'N', align: 'point', cells: members.map(({ axialForce }) => short(axialForce)) },
    { head: 'on one contact', unit: 'N', align: 'point', cells: members.map(({ load }) => short(load)) },
    {
      head: 'temperature',
      unit: '',
      align: 'right',
      cells: members.map(({ temperature }) =>
        temperature === null ? '–' : printQuantity(temperature, 'temperature', { digits: 3 }),
      ),
    },
    { head: 'points', unit: '', align: 'right', cells: members.map(({ points }) => String(points.length)) },
  ])

function lawTable({ axis, atSpeeds, overall }: Series, unit: SpeedUnit): string {
  const scale = axis === 'load' ? 1 : 1e-3
  const laws = overall === null ? atSpeeds : [...atSpeeds, overall]
  return textTable([
    {
      head: 'speed',
      unit: unit.text,
      align: 'right',
      cells: laws.map(({ slidingSpeed }) => (slidingSpeed === null ? 'all' : short(fromSi(slidingSpeed, unit)))),
    },
    {
      head: axis === 'load' ? 'a' : 'E',
      unit: axis === 'load' ? '' : 'kJ/mol',
      align: 'right',
      cells: laws.map((law) => intervalInWords(law, scale)),
    },
    {
      head: 'shared',
      unit: '',
      align: 'right',
      cells: laws.map(({ shared }) => (shared === 0 ? '–' : String(Number((shared * scale).toPrecision(2))))),
    },
    { head: 'records', unit: '', align: 'right', cells: laws.map(({ records }) => String(records)) },
  ])
}

const interceptTable = ({ intercepts }: Series, unit: SpeedUnit): string =>
  textTable([
    {
      head: 'speed',
      unit: unit.text,
      align: 'right',
      cells: intercepts.map((one) => short(fromSi(one.slidingSpeed, unit))),
    },
    { head: 'slope', unit: '', align: 'right', cells: intercepts.map(({ slope }) => intervalInWords(slope)) },
    {
      head: 'intercept',
      unit: 'mN',
      align: 'right',
      cells: intercepts.map(({ intercept }) => intervalInWords(intercept, 1000)),
    },
  ])

function lawSentences({ sentences, scatter, overall }: Series): string[] {
  if (overall === null || overall.records < 3) return [...sentences]
  return [
    ...sentences,
    `About that law the records scatter by ${printQuantity(scatter, 'ratio', { digits: 2, unit: '%' })} of friction, all speeds of a record together.`,
  ]
}

/** All records in one plot, the second and further ones as `x`. */
function plotOf({ members }: Series, unit: SpeedUnit, screen: Screen): string {
  const points = members.flatMap(({ points: own }, i) =>
    own.map(({ slidingSpeed, friction }) => ({ speed: fromSi(slidingSpeed, unit), friction, trusted: i === 0 })),
  )
  const plot = characterPlot(
    { points, line: [], speedUnit: unit.text },
    { width: Math.min(screen.width, 78), rows: 12, unicode: screen.unicode },
  )
  return plot === undefined
    ? ''
    : `${painted(screen, 'Friction coefficient', 'strong')}   o first record   x the others\n${plot}`
}

const short = (value: number): string => String(Number(value.toPrecision(4)))
