import type { TurnMapOfFile } from '../../bench/turnMap/index.ts'
import { changeInWords } from '../../core/reduce/index.ts'
import { painted, type Screen } from '../screen.ts'
import { characterMap } from './characterMap.ts'
import { headLine } from './reductionInWords.ts'
import { wrap } from './wrap.ts'

const names = {
  friction: 'Friction coefficient',
  frictionSwing: 'Friction against that of its step',
  axialForce: 'Axial force',
  gap: 'Gap',
} as const

/** The map for people: shades by turn and place, and what changed. */
export function turnMapInWords({ reduced, map, change }: TurnMapOfFile, screen: Screen): string {
  const width = Math.min(screen.width, 110)
  const title = (text: string): string => painted(screen, text, 'strong')
  const { quantity, sentence, remarks } = change
  const range =
    map.range === null ? 'empty' : `${map.range.map((end) => changeInWords(end, quantity)).join(' to ')}, light to dark`
  const sections = [
    headLine(reduced, screen),
    `${title(names[quantity])} (${range}); turns downwards, place in the turn across\n${characterMap(map, { width: Math.min(width, 82), rows: 18, unicode: screen.unicode })}`,
    `${title('Late turns against early ones')}\n${wrap(sentence, width, { indent: '  ' })}`,
    ...remarks.map(({ next }) => wrap(next, width, { indent: '  ' })),
  ]
  return `${sections.join('\n\n')}\n`
}
