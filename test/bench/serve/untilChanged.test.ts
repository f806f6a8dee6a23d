import { expect, test } from 'vitest'
import type { LabPulse } from '../../../src/bench/serve/labPulse.ts'
import { UntilChanged } from '../../../src/bench/serve/untilChanged.ts'
import { done, failed } from '../../../src/core/terms/index.ts'

const trouble = { kind: 'labBusy', class: 'store', place: {}, what: 'Busy.', mend: 'Wait.' } as const

/** A lab that changes when the test says so. */
function remembering() {
  const pulse = { last: 1, beat: async () => done([]) }
  const remembered = new UntilChanged(pulse as unknown as LabPulse) // as much of it as is asked for
  let made = 0
  const make = async () => done(++made)
  return { pulse, remembered, make }
}

test('worked out once until the lab changes, each key for itself', async () => {
  const { pulse, remembered, make } = remembering()
  expect(await Promise.all([remembered.get('a', make), remembered.get('a', make)])).toEqual([done(1), done(1)])
  expect(await remembered.get('b', make)).toEqual(done(2))
  expect(await remembered.get('a', make)).toEqual(done(1))
  pulse.last = 2
  expect(await remembered.get('a', make)).toEqual(done(3))
})

test('what went wrong is tried again', async () => {
  const { remembered, make } = remembering()
  expect((await remembered.get('a', async () => failed(trouble))).ok).toBe(false)
  await expect(remembered.get('a', () => Promise.reject(new Error('ours')))).rejects.toThrow('ours')
  expect(await remembered.get('a', make)).toEqual(done(1))
})
