import { type ReducedRecord, regimeNames } from '../../bench/index.ts'
import { painted, type Screen } from '../screen.ts'
import { choiceTable, curveInWords, featureTable, parameterTable, short } from './curveInWords.ts'
import { headLine, plotOf } from './reductionInWords.ts'
import { remarksInWords } from './remarksInWords.ts'
import { wrap } from './wrap.ts'

/** The fit for people: chosen curve, parameters, features, rivals, correlations, and the remarks on the curve. */
export function fitInWords(record: ReducedRecord, screen: Screen): string {
  const { curve, reduction } = record
  const width = Math.min(screen.width, 110)
  const say = (text: string): string => wrap(text, width, { indent: '  ' })
  const title = (text: string): string => painted(screen, text, 'strong')
  if (curve === null) return `${headLine(record, screen)}\n`
  const remarks = `${title('Remarks')}\n${remarksInWords({ ...record, reduction: { ...reduction, points: [] } }, screen, width)}`
  const fitted = [
    `${title('Parameters')}\n${parameterTable(curve)}`,
    `${title('Features')}\n${featureTable(curve, regimeNames(record.setup), width)}`,
    `${title('Rivals')}\n${choiceTable(curve)}`,
    `${title('How sure')}\n${say(sureInWords(record))}`,
  ]
  const sections = [
    headLine(record, screen),
    plotOf(record, screen),
    say(curveInWords(curve)),
    ...(curve.model === null ? [] : fitted),
    say(reduction.window.sentence),
    remarks,
  ]
  return `${sections.filter((section) => section !== '').join('\n\n')}\n`
}

function sureInWords({ curve }: ReducedRecord): string {
  if (curve === null) return ''
  const chi =
    curve.chiSquared === null
      ? ''
      : `Weighted sum of squares ${short(curve.chiSquared)} on ${curve.degreesOfFreedom} degrees of freedom. `
  const pairs = curve.correlations.map(({ first, second, value }) => `${first} with ${second} ${value.toFixed(2)}`)
  const correlated =
    pairs.length === 0 ? 'No two parameters are correlated above 0.9.' : `Correlated above 0.9: ${pairs.join(', ')}.`
  return `${chi}${correlated} Band: ${curve.bandMethod}`
}
