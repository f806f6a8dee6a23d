import { fixtureInWords, type ReducedRecord, regimeNames, signsOf } from '../../bench/index.ts'
import { fromSi } from '../../core/quantity/index.ts'
import { painted, type Screen } from '../screen.ts'
import { budgetInWords } from './budgetInWords.ts'
import { characterPlot } from './characterPlot.ts'
import { columnTable } from './columnsInWords.ts'
import { curveInWords, featureTable } from './curveInWords.ts'
import { pointTable, speedUnitOf } from './pointTable.ts'
import { remarksInWords } from './remarksInWords.ts'
import { wrap } from './wrap.ts'
import { zeroesInWords } from './zeroesInWords.ts'

const widest = 110

/** The whole answer for people: what was read, the points, the curve, how far to believe it, and what to do next. */
export function reductionInWords(record: ReducedRecord, screen: Screen): string {
  const { reduction, curve } = record
  const width = Math.min(screen.width, widest)
  const say = (text: string): string => wrap(text, width, { indent: '  ' })
  const title = (text: string): string => painted(screen, text, 'strong')
  const sections = [
    headLine(record, screen),
    `${title('Read')}\n${columnTable(record, width)}`,
    `${title('Points')}\n${pointTable(reduction.points, signsOf(reduction.points))}`,
    plotOf(record, screen),
    `${title('Believe')}\n${say(reduction.window.sentence)}\n${say(reduction.window.plateau.sentence)}`,
    curve === null
      ? ''
      : `${title('Curve')}\n${say(curveInWords(curve))}${curve.model === null ? '' : `\n${featureTable(curve, regimeNames(record.setup), width)}`}`,
    `${title('Uncertainty and zeroes')}\n${say(budgetInWords(record.budget))}\n${say(zeroesInWords(reduction))}`,
    `${title('Remarks')}\n${remarksInWords(record, screen, width)}`,
    painted(screen, say(footLine(record)), 'quiet'),
  ]
  return `${sections.filter((section) => section !== '').join('\n\n')}\n`
}

export function headLine({ file, setup, read }: ReducedRecord, screen: Screen): string {
  const sample = setup.run.sample === undefined ? '' : `${setup.run.sample} · `
  const rows = `${read.rows.toLocaleString('en')} rows`
  return `${painted(screen, `${sample}${file}`, 'accent')} · ${fixtureInWords(setup)} · ${rows}`
}

/** A small plot where there are two points to show. */
export function plotOf({ reduction, curve }: ReducedRecord, screen: Screen): string {
  const unit = speedUnitOf(reduction.points)
  const points = reduction.points.flatMap(({ slidingSpeed, friction, trusted }) =>
    friction !== null && friction > 0 && slidingSpeed > 0
      ? [{ speed: fromSi(slidingSpeed, unit), friction, trusted }]
      : [],
  )
  const line = (curve?.band ?? []).map((at) => ({ speed: fromSi(at.slidingSpeed, unit), friction: at.friction }))
  const plot = characterPlot(
    { points, line, speedUnit: unit.text },
    { width: Math.min(screen.width, 78), rows: 15, unicode: screen.unicode },
  )
  if (plot === undefined) return ''
  const key = points.some(({ trusted }) => !trusted) ? '   o step   x step not in the fit' : ''
  return `${painted(screen, 'Friction coefficient', 'strong')}${key}\n${plot}`
}

const footLine = ({ options, origin }: ReducedRecord): string =>
  `${origin.program}, seed ${origin.seed}, ${options.bandDraws} draws behind the band. Options not named in the setup are defaults; --json shows all of them.`
