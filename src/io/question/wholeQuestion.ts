import type { Section } from '../setup/keyKinds.ts'
import { setupKeys } from '../setup/setupKeys.ts'
import { questionKeys } from './questionKeys.ts'

// There is no record yet: neither columns nor options of a reduction belong into a question.
const { columns: _, options: __, ...shared } = setupKeys.keys
const { title, ...asked } = questionKeys.keys

/** A question file as a whole: its title, the sections that it shares with a setup, and what is asked. */
export const wholeQuestion: Section = { ...questionKeys, keys: { title, ...shared, ...asked } }
