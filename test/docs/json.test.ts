import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { withFields } from '../../scripts/resultFields.ts'
import { exitCodes } from '../../src/cli/exitCodes.ts'

const page = readFileSync('docs/json.md', 'utf8')

test('docs/json.md shows the fields of the schema (mend: node scripts/resultFields.ts)', () => {
  expect(page).toBe(withFields(page, JSON.parse(readFileSync('schema/result.schema.json', 'utf8'))))
})

test('docs/json.md names every class of error with its exit code', () => {
  for (const name of ['wrongUse', 'badInput', 'store', 'fault'] as const) {
    expect(page).toContain(`\`${name}\` (${exitCodes[name].code})`)
  }
})
