import { checklist } from '../completeness/checklist.ts'
import { counted, inWords } from '../words/printed.ts'
import type { SectionOf } from './sectionOf.ts'

/** What a complete friction report holds, and what this one still lacks. */
export const completenessSection: SectionOf = (input) => {
  const items = checklist(input)
  const whole = items.filter(({ state }) => state === 'present').length
  const lacking = items.filter(({ state }) => state === 'lacking').length
  const text = `Friction belongs to the whole of bodies, liquid, rig and run, so a value can be used by others only where all of it is told. The list holds the items of ASTM G115 in our own words, from memory, and after them what a rotational rheometer adds. Of ${counted(items.length, 'item')} this report holds ${inWords(whole)} wholly and lacks ${inWords(lacking)}; of the others it holds a part.`
  return {
    heading: 'How complete this report is',
    blocks: [
      { kind: 'paragraph', text },
      { kind: 'checklist', items },
    ],
  }
}
