import type { ReducedRecord } from '../../src/bench/index.ts'
import { reduceDefaults } from '../../src/core/reduce/index.ts'
import type { RealRecord } from '../figure/realRecords.ts'

/** A record of the tests as the bench hands it on, as far as pictures and findings look at it. */
export const asReduced = ({ name, setup, reduction, channels }: RealRecord): ReducedRecord => ({
  file: `${name}.csv`,
  read: {
    rows: channels.rows,
    columns: [],
    dialect: {
      kind: 'text',
      separator: ',',
      decimalMark: '.',
      encoding: 'utf-8',
    } as unknown as ReducedRecord['read']['dialect'],
    preamble: [],
  },
  setup,
  options: { ...reduceDefaults, ...setup.options },
  reduction,
  curve: null,
  budget: [],
  remarks: reduction.remarks,
  origin: { raw: '', setup: '', options: {}, program: 'test', seed: 1 },
})
