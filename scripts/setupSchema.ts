import { writeFileSync } from 'node:fs'
import { setupJsonSchema } from '../src/io/index.ts'
import { ownJsonSchema } from '../src/io/ownThings/index.ts'
import { questionJsonSchema } from '../src/io/question/index.ts'

// Writes the JSON Schemas of setups, questions and own bodies and liquids from the tables that the readers use. Run it after a
// change of the keys, then format the files; tests compare the two.
for (const [name, schema] of [
  ['setup', setupJsonSchema()],
  ['question', questionJsonSchema()],
  ['material', ownJsonSchema()],
] as const) {
  writeFileSync(new URL(`../schema/${name}.schema.json`, import.meta.url), `${JSON.stringify(schema, null, 2)}\n`)
}
