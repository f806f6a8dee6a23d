import { expect, test } from 'vitest'
import type { Difference, Finding, Verification } from '../../../src/bench/lab/index.ts'
import { verificationInWords } from '../../../src/cli/show/verificationInWords.ts'
import type { KeptRecord, KeptResult } from '../../../src/store/index.ts'
import { capturedDesk } from '../capturedDesk.ts'

// A made-up verification; no lab was verified.

const change = { number: 1, at: '2026-11-25T09:00:00.000Z', who: 'MK', why: '' }

const record = (name: string, digit: string): KeptRecord => ({
  ...{ id: digit.repeat(64), name, size: 1, version: 1, supersedes: null, added: change, change },
  ...{ study: null, sample: null, replicate: null, mountedBy: null, ballSet: null, day: null, setup: null },
})

const result = (program: string): KeptResult => ({
  ...{ id: '9'.repeat(64), kind: 'fit', sha256: '8'.repeat(64), change },
  origin: { raw: '1'.repeat(64), setup: '2'.repeat(64), options: {}, program, seed: 1 },
})

const difference = (field: string, largest: number | null, more: Partial<Difference> = {}): Difference => ({
  ...{ field, changed: 1, of: 2, largest, at: field, before: 1, after: 1 + (largest ?? 0) },
  ...more,
})

const changed = (name: string, digit: string, differences: readonly Difference[]): Finding => ({
  ...{ what: 'changed', record: record(name, digit), result: result('kufe 0.1.0'), keptBeside: false, differences },
})

const seen = (findings: readonly Finding[], more: Partial<Verification> = {}): Verification => ({
  ...{ where: '/lab', program: 'kufe 0.2.0', records: 2, setups: 1, results: 2, same: 0, sameByOther: 0 },
  ...{ superseded: 0, keptBeside: 0, notReduced: [], findings },
  ...more,
})

const words = (verification: Verification): string => verificationInWords(verification, capturedDesk().screen)

test('results of an older version that change alike are told together, friction first, each field where it changed most', () => {
  const text = words(
    seen([
      changed('a.csv', 'a', [difference('curve.end.iterations', 0.5), difference('points[].friction', 0.01)]),
      changed('b.csv', 'b', [
        difference('points[].friction', 0.03),
        difference('window.sentence', null, { before: 'x', after: 'y' }),
      ]),
    ]),
  )
  expect(text).toContain(
    '2 results of kufe 0.1.0 that this version gives otherwise; keep its own beside them with --keep:',
  )
  expect(text).toContain('a.csv (aaaaaaaaaaaa), b.csv (bbbbbbbbbbbb)')
  expect(text).toContain('Friction values changed by at most 3 %.')
  const lines = text.split('\n').map((line) => line.trim().replace(/ {2,}/g, ' | '))
  expect(lines).toContain('points[].friction | 2 | 3 % | 1 → 1.03, b.csv')
  expect(lines).toContain('window.sentence | 1 | "x" → "y", b.csv')
  expect(lines.findIndex((line) => line.startsWith('points'))).toBeLessThan(
    lines.findIndex((line) => line.startsWith('curve')),
  )
})

test('where no friction changed, that is said; many records and fields are cut short', () => {
  const fields = Array.from({ length: 13 }, (_, i) => difference(`curve.field${i}`, 0.1))
  const text = words(seen(Array.from({ length: 9 }, (_, i) => changed(`${i}.csv`, String(i), fields))))
  expect(text).toContain('No friction value changed.')
  expect(text).toContain('5.csv (555555555555) and 3 more')
  expect(text).toContain('and 3 more fields; --json names all of them')
})

test('the same version that gives something else is told apart from another version', () => {
  const [one] = [changed('a.csv', 'a', [difference('points[].friction', 0.01)])]
  if (one.what !== 'changed') throw new Error('it is made so')
  const text = words(
    seen([{ what: 'differs', record: one.record, result: result('kufe 0.2.0'), differences: one.differences }]),
  )
  expect(text).toContain('1 result of kufe 0.2.0 that kufe 0.2.0 does not give again:')
})

test('records without a result are named', () => {
  expect(words(seen([], { notReduced: [record('bare.csv', 'c')] }))).toContain(
    '1 record without a result of their setup: bare.csv (cccccccccccc)\nNothing was found.',
  )
})
