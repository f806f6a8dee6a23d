import { expect, test } from 'vitest'
import { reportBeyond } from '../../src/bench/reportBeyond.ts'
import { realRecord } from '../figure/realRecords.ts'
import { asReduced } from './asReduced.ts'

test('the chattering lacquer gets its vibration, with a figure and a row for each step that sticks', async () => {
  const record = await realRecord('stick-slip')
  const { findings, figures } = reportBeyond(asReduced(record), record.channels)
  const found = findings.find(({ heading }) => heading === 'Stick–slip and vibration')
  expect(found?.table?.rows.map(([step, what]) => [step, what])).toEqual(
    ['1', '2', '3', '4', '5'].map((step) => [step, 'stick–slip']),
  )
  expect(figures.map(({ name }) => name)).toContain('stickSlip')
})

test('the wearing ball gets its wear from a gap that stands clear of drift', async () => {
  const record = await realRecord('wearing-ball')
  const { findings, figures } = reportBeyond(asReduced(record), record.channels)
  expect(findings.find(({ heading }) => heading === 'Wear')?.sentences.join(' ')).toMatch(/gap fell by 60 µm/)
  expect(figures.map(({ name }) => name)).toContain('wear')
})

test('a calm record gets nothing', async () => {
  const record = await realRecord('varnish-a-1')
  expect(reportBeyond(asReduced(record), record.channels)).toEqual({ findings: [], figures: [] })
})

test('a torque in the noise is neither a start from rest nor stick and slip', async () => {
  const record = await realRecord('near-torque-floor')
  const { figures } = reportBeyond(asReduced(record), record.channels)
  expect(figures.map(({ name }) => name)).toEqual([])
})
