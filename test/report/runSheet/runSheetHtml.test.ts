import { expect, test } from 'vitest'
import type { JudgedAnswer } from '../../../src/core/terms/index.ts'
import { runSheetHtml } from '../../../src/report/index.ts'
import { inventedSheet } from './inventedSheet.ts'

/** Numbers are held to their units by blanks that do not break. */
const htmlOf = (...args: Parameters<typeof runSheetHtml>): string =>
  runSheetHtml(...args).replace(/[\u00a0\u202f]/g, ' ')

const sheet = inventedSheet

test('the caution stands before its step, the box and its range after it', () => {
  const html = htmlOf(sheet)
  const places = [
    'The stage moves.',
    'Zero the axial force.',
    '<span class="box">',
    '-3 mN to 3 mN',
    'Otherwise: Zero again.',
  ].map((part) => html.indexOf(part))
  expect(places.every((place) => place > 0)).toBe(true)
  expect(places).toEqual([...places].sort((a, b) => a - b))
})

test('steps count on from part to part, the sweep has its table, the whole its time', () => {
  const html = htmlOf(sheet)
  expect(html).toContain('<ol class="sheet" start="2">')
  expect(html).toMatch(/1 mm\/s<\/td>.*0\.0667 rad\/s/)
  expect(html).toContain('11 min')
})

test('what people wrote is text', () => {
  const html = htmlOf(sheet)
  expect(html).toContain('Lacquer &lt;A&gt; &amp; &quot;B&quot;')
  expect(html).not.toContain('<A>')
  expect(html).not.toContain('<script')
})

test('answers stand in their boxes, outside ones are marked', () => {
  const answers: JudgedAnswer[] = [
    { id: 'forceZero', value: 0.01, state: 'outside', sentence: '' },
    { id: 'sweep', value: true, state: 'within', sentence: '' },
  ]
  const html = htmlOf(sheet, answers)
  expect(html).toContain('<span class="box outside">✗ 10 mN</span>')
  expect(html).toContain('<span class="box within">✓ yes</span>')
})

test('the same sheet gives the same bytes', () => {
  expect(runSheetHtml(sheet)).toBe(runSheetHtml(structuredClone(sheet)))
})
