import type { Replicate } from '../../../src/core/decide/index.ts'

/** A replicate with the given frictions at 1, 10 and 100 mm/s; changes go before what is taken here. */
export const stepsOf = (frictions: readonly number[], changes: Partial<Replicate> = {}): Replicate => ({
  record: `record ${frictions.join(' ')}`,
  name: 'record.csv',
  sample: 'lacquer',
  points: frictions.map((friction, i) => ({ slidingSpeed: 1e-3 * 10 ** i, friction, own: 0, shared: {} })),
  window: { low: null, high: null },
  rig: 'one',
  fixture: 'one',
  blocks: { day: null, operator: null, ballSet: null },
  ...changes,
})
