import { expect, test } from 'vitest'
import { withoutPostgres } from './engines.ts'

test('the suite ran on PostgreSQL too', ({ skip }) => {
  if (process.env.KUFE_TEST_POSTGRES === 'required') expect(withoutPostgres).toBeUndefined()
  if (withoutPostgres !== undefined) skip(withoutPostgres)
})
