import type { LackingItem } from './lackingItem.ts'

/** Where the words of an item send people: a note by its key, or keys of the setup. */
export function asked(text: string): Pick<LackingItem, 'note' | 'setup'> {
  const note = /note “(\w+)” of the report/.exec(text)?.[1] ?? null
  const written = /Write (.+?) into the setup/.exec(text)?.[1] ?? ''
  return { note, setup: [...written.matchAll(/[a-z]\w*(?:\.\w+)+/g)].map(([key]) => key) }
}
