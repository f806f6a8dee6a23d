import { expect, test } from 'vitest'
import { mendHere } from '../../../../../src/web/stations/read/uploads/mendHere.ts'
import { nameGuess } from '../../../../../src/web/stations/read/uploads/nameGuess.ts'

test.for([
  ['lacquer-a-2.csv', 'lacquer-a', 2],
  ['Lacquer B 03.xlsx', 'Lacquer B', 3],
  ['oat_run_12.txt', 'oat', 12],
  ['wax.csv', 'wax', null],
  ['piano3.csv', 'piano', 3],
  ['2026-11-25.csv', '2026-11-25', null],
  ['PMMA 0.csv', 'PMMA 0', null],
  ['Öl#4.parquet', 'Öl', 4],
  ['.csv', '', null],
] as const)('%s', ([file, sample, replicate]) => {
  expect(nameGuess(file)).toEqual({ sample, replicate })
})

test('options of the terminal become places of the page, other mends stay', () => {
  expect(mendHere('Name it with --column "Ding=torque".')).toContain('Click the heading')
  expect(mendHere('Say how the file writes its table: --separator, --decimal.')).toContain('Say below')
  expect(mendHere('Write the time, or take the row out.')).toBe('Write the time, or take the row out.')
})
