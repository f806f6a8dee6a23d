import { describe, expect, test } from 'vitest'
import { askOf, chosenSamples, decisionFrom, marginAsked, plainDecision } from '../../../src/core/decide/index.ts'
import { replicate, replicates } from './replicates.ts'

describe('which samples are compared', () => {
  const all = [...replicates('A', [1, 1.01]), ...replicates('B', [0.9, 0.91]), replicate('C', 1)]
  const names = (chosen: readonly string[] | null) => {
    const { replicates: kept, aside } = chosenSamples(all, chosen)
    return [[...new Set(kept.map(({ sample }) => sample))], aside]
  }

  test('without a word those with two replicates or more; all where there are none such', () => {
    expect(names(null)).toEqual([['A', 'B'], ['C']])
    expect(chosenSamples([replicate('A', 1), replicate('B', 1)], null).aside).toEqual([])
  })

  test('those that were chosen; names that nobody bears count for nothing', () => {
    expect(names(['C', 'A'])).toEqual([['A', 'C'], ['B']])
    expect(names(['D'])).toEqual([['A', 'B'], ['C']])
  })
})

test('a paper of decision is read as far as it is one', () => {
  expect(decisionFrom(null)).toEqual(plainDecision)
  const removal = { record: 'A-1', by: 'MK', why: 'odd' }
  const read = decisionFrom({
    ...{ margin: -1, scale: 'difference', scatter: 'none', at: [0.01, 'fast', 0], rankAt: 0.1 },
    ...{ removals: [removal, { ...removal, why: ' ' }, 7], samples: ['A', 3] },
  })
  expect(read).toEqual({
    ...{ margin: null, scale: 'difference', scatter: 'pooled', at: [0.01], rankAt: 0.1 },
    ...{ removals: [removal], samples: ['A'] },
  })
  expect(askOf(read)).toEqual({
    options: { scale: 'difference', scatter: 'pooled', margin: 0.02 },
    ...{ at: [0.01], rankAt: 0.1, removals: [removal] },
  })
})

test('the margin that the question names; nothing where it names none that can be read', () => {
  expect(marginAsked({ deciding: { margin: '15 %' } })).toBeCloseTo(0.15, 12)
  for (const content of [
    null,
    7,
    {},
    { deciding: null },
    { deciding: { margin: 'wide' } },
    { deciding: { margin: '0 %' } },
  ]) {
    expect(marginAsked(content)).toBeUndefined()
  }
})
