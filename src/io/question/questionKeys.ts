import type { Section } from '../setup/keyKinds.ts'
import { askKeys } from './askKeys.ts'
import { bearsKeys } from './bearsKeys.ts'
import { decidingKeys, expectedKeys, noiseKeys } from './expectedKeys.ts'

/** What a question says beside the sections of a setup. */
export const questionKeys: Section = {
  is: 'section',
  about: 'What is to be found out, before anything is mounted.',
  keys: {
    title: {
      is: 'text',
      example: 'Which lacquer lets the drawer slide easier?',
      about: 'The question in one sentence.',
    },
    assumed: {
      is: 'text',
      example: 'ask.uncertainty, pair.lower.thickness',
      about: 'Keys whose values nobody has confirmed yet, with commas between them. The bench keeps this list.',
    },
    ask: askKeys,
    bears: bearsKeys,
    expected: expectedKeys,
    noise: noiseKeys,
    deciding: decidingKeys,
  },
}
