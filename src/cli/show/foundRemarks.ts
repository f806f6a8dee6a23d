import { type Remark, remarkWords } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { weightSigns } from './weightSigns.ts'
import { wrap } from './wrap.ts'

/** Remarks that belong to no point of a curve: sign, words, step, sentence and what to do. Nothing where there are none. */
export function foundRemarks(remarks: readonly Remark[], screen: Screen, width: number): string {
  if (remarks.length === 0) return ''
  const told = remarks.map(({ kind, step, sentence, next }) => {
    const { words, weight } = remarkWords[kind]
    const head = `  ${weightSigns[weight]}  ${words}${step === undefined ? '' : `, step ${step}`}`
    return `${painted(screen, head, weight === 'stops' ? 'warn' : 'strong')}\n${wrap(`${sentence} ${next}`, width, { indent: '     ' })}`
  })
  return `${painted(screen, 'Remarks', 'strong')}\n${told.join('\n')}`
}
