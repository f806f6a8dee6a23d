import { expect, test } from 'vitest'
import { errorRateStudy, isKept, type RateRow, rateTables } from '../../src/bench/errorRates/index.ts'

const outside = { now: () => new Date(0), progress: () => {}, stop: { aborted: false }, program: 'kufe 0.0.0-test' }

test('the power that a plan promises is there, as far as sixty draws tell', async () => {
  const study = await errorRateStudy({ seed: 20261125, draws: 60, table: 'power' }, outside)
  expect(study.rows.length).toBeGreaterThan(10)
  const off = study.rows.filter(({ share, promised, of }) => {
    return Math.abs(share - promised) > 3.5 * Math.sqrt((promised * (1 - promised)) / of)
  })
  expect(off).toEqual([])
}, 60_000)

test('the same seed counts the same, another counts otherwise', async () => {
  const counts = async (seed: number) =>
    (await errorRateStudy({ seed, draws: 12, table: 'same' }, outside)).rows.map(({ counted }) => counted)
  const [first, again, other] = [await counts(5), await counts(5), await counts(6)]
  expect(again).toEqual(first)
  expect(other).not.toEqual(first)
}, 60_000)

test('a promise counts as kept within two standard errors of the count', () => {
  const row: RateRow = {
    ...{ table: 'band', row: '', replicates: '3', promised: 0.95, least: 0.94, most: 0.96 },
    ...{ counted: 0, of: 4000, share: 0.935, standardError: 0.003 },
  }
  expect(isKept(row)).toBe(true)
  expect(isKept({ ...row, share: 0.933 })).toBe(false)
  expect(isKept({ ...row, share: 0.967 })).toBe(false)
})

test('it stops where it is told to, and knows its tables', async () => {
  const stopped = await errorRateStudy({ seed: 1, draws: 100, table: 'band' }, { ...outside, stop: { aborted: true } })
  expect(stopped.rows).toEqual([])
  expect(rateTables).toEqual(['band', 'falseAlarm', 'same', 'power', 'scatter', 'unlike'])
})
