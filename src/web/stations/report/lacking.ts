import { asked } from './asked.ts'
import type { LackingItem } from './lackingItem.ts'

const states = ['present', 'partly', 'lacking'] as const

/** What a report says of its own completeness, read out of its page: page and print then agree with what stands beside them. */
export function lackingItems(html: string): readonly LackingItem[] {
  // The rest of the page has styles of its own, which this page's security policy would complain of.
  const section = /<section id="completeness"[\s\S]*?<\/section>/.exec(html)?.[0] ?? ''
  const page = new DOMParser().parseFromString(section, 'text/html')
  return [...page.querySelectorAll('#completeness .checklist > li')].map((row) => {
    const text = row.querySelector('p')?.textContent ?? ''
    return {
      state: states.find((state) => row.classList.contains(state)) ?? 'lacking',
      item: row.querySelector('b')?.textContent ?? '',
      text,
      ...asked(text),
    }
  })
}
