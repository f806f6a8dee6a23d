import type { FilledSheet } from '../../bench/plan/index.ts'
import { painted, type Screen } from '../screen.ts'
import { wrap } from './wrap.ts'

/** How the checks of a run sheet came out; nothing where nobody has answered. */
export function answersInWords({ answers }: FilledSheet, screen: Screen): string {
  if (answers === null) return ''
  const count = (state: string): number => answers.filter((answer) => answer.state === state).length
  const outside = answers.filter(({ state }) => state === 'outside')
  const head = `${count('within')} checks within their range, ${outside.length} outside, ${count('open')} open.`
  const width = Math.min(screen.width, 110)
  const lines = [head, ...outside.map(({ sentence, note }) => `${sentence}${note === undefined ? '' : ` (${note})`}`)]
  return `\n${painted(screen, 'Run sheet', 'strong')}\n${lines.map((line) => wrap(line, width, { indent: '  ' })).join('\n')}\n`
}
