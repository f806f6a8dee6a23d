import { type JudgedLimits, limitInWords, ruleInWords } from '../../bench/decide/limit/index.ts'
import { printQuantity, printWithUncertainty } from '../../core/quantity/index.ts'
import type { Screen } from '../screen.ts'
import { painted } from '../screen.ts'
import { leftInWords } from './leftInWords.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

const verdictWords = { pass: 'pass', fail: 'FAIL', cannotTell: 'cannot tell' } as const

type Speeds = JudgedLimits['answers'][number]['speeds']

/** Verdicts of all samples with their tables. */
export function limitsInWords({ title, ask, answers, left, paper }: JudgedLimits, screen: Screen): string {
  const width = Math.min(screen.width, 100)
  const kept = paper === null ? '' : `\n${wrap(`The limit is the paper ${paper}.`, width)}`
  const head = `${painted(screen, title, 'strong')}: ${limitInWords(ask.tolerance)}\n${wrap(`Rule: ${ruleInWords(ask.rule)}.`, width)}${kept}`
  const parts = answers.map(
    ({ sample, verdict, sentence, speeds }) =>
      `\n${painted(screen, `${sample}: ${verdictWords[verdict]}`, verdict === 'pass' ? 'accent' : 'warn')}\n${wrap(sentence, width, { indent: '  ' })}\n${speeds.length === 0 ? '' : `\n${speedTable(fewOf(speeds))}\n`}`,
  )
  return `${head}\n${parts.join('')}${leftInWords(left)}`
}

/** Every speed that does not pass, and of those that do the ends and some between. */
function fewOf(speeds: Speeds): Speeds {
  const stride = Math.max(1, Math.ceil(speeds.length / 12))
  return speeds.filter(
    ({ verdict }, i) => i % stride === 0 || i === speeds.length - 1 || (verdict !== 'pass' && speeds.length <= 24),
  )
}

function speedTable(speeds: Speeds): string {
  const percent = (share: number): string =>
    share > 0 && share < 1e-4 ? '< 0.01 %' : printQuantity(share, 'ratio', { digits: share > 0.99 ? 4 : 2, unit: '%' })
  const cells = (of: (speed: Speeds[number]) => string): string[] => speeds.map(of)
  return textTable([
    {
      head: 'speed',
      unit: 'mm/s',
      align: 'point',
      cells: cells(({ slidingSpeed }) => String(Number((1000 * slidingSpeed).toPrecision(4)))),
    },
    {
      head: 'friction ± u',
      unit: '',
      align: 'point',
      cells: cells(({ friction, standardUncertainty }) => printWithUncertainty(friction, standardUncertainty)),
    },
    {
      head: 'guard band',
      unit: '',
      align: 'point',
      cells: cells(({ passGuard }) => String(Number(passGuard.toPrecision(2)))),
    },
    {
      head: 'keeps the limit',
      unit: 'probability',
      align: 'right',
      cells: cells(({ conformance }) => percent(conformance)),
    },
    { head: 'verdict', unit: '', align: 'left', cells: cells(({ verdict }) => verdictWords[verdict]) },
    {
      head: 'wrong',
      unit: 'probability',
      align: 'right',
      cells: cells(({ wrong }) => (wrong === null ? '' : percent(wrong))),
    },
  ])
}
