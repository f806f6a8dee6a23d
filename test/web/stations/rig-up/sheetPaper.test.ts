import { expect, test } from 'vitest'
import type { OrderedSheet, SheetCheck } from '../../../../src/core/terms/index.ts'
import {
  emptySheet,
  firstOpen,
  numbered,
  sheetForRecord,
  withAnswer,
  withTick,
} from '../../../../src/web/stations/rig-up/sheetPaper.ts'

const check: SheetCheck = { read: 'held', dimension: 'yes', low: null, high: null, accept: 'yes', otherwise: 'Again.' }
const entry = (id: string, asked: SheetCheck | null) => {
  return { id, cautions: [], text: id, check: asked, duration: 0, distance: 0 }
}
const sheet: OrderedSheet = {
  title: 'invented',
  subtitle: '',
  foreword: [],
  parts: [
    { name: 'one', heading: 'One', entries: [entry('air', null), entry('mount', check)] },
    { name: 'two', heading: 'Two', entries: [entry('load', null)] },
  ],
  sweep: [],
  totals: { time: 0, distance: 0 },
}

test('entries are numbered over all parts', () => {
  expect(numbered(sheet).map(({ number, entry: { id } }) => `${number} ${id}`)).toEqual(['1 air', '2 mount', '3 load'])
})

test('the first open one comes next, the last where all are done', () => {
  const all = numbered(sheet)
  expect(firstOpen(all, withTick(emptySheet, 'air', true))?.entry.id).toBe('mount')
  const done = ['air', 'mount', 'load'].reduce((paper, id) => withTick(paper, id, true), emptySheet)
  expect(firstOpen(all, done)?.entry.id).toBe('load')
  expect(withTick(done, 'air', false).ticked).toEqual(['mount', 'load'])
})

test('an answer is changed in place, and gone where it says nothing', () => {
  const once = withAnswer(emptySheet, { id: 'mount', value: false })
  expect(withAnswer(once, { id: 'mount', value: true }).answers).toEqual([{ id: 'mount', value: true }])
  expect(withAnswer(once, { id: 'mount', value: null }).answers).toEqual([])
  expect(withAnswer(once, { id: 'mount', value: null, note: 'late' }).answers).toHaveLength(1)
})

test('a record gets the sheet with the answers to its checks alone', () => {
  expect(sheetForRecord(emptySheet)).toBeUndefined()
  const noted = withAnswer(withAnswer(emptySheet, { id: 'mount', value: true }), {
    id: 'air',
    value: null,
    note: '23 °C',
  })
  expect(sheetForRecord({ ...noted, sheet })).toEqual({ sheet, answers: [{ id: 'mount', value: true }] })
})
