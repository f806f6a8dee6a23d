import { writeFileSync } from 'node:fs'
import { setupJsonSchema } from '../src/io/index.ts'

// Writes the JSON Schema of setup files from the table that the reader uses. Run it after a change of the keys, then
// format the file; a test compares the two.
writeFileSync(
  new URL('../schema/setup.schema.json', import.meta.url),
  `${JSON.stringify(setupJsonSchema(), null, 2)}\n`,
)
