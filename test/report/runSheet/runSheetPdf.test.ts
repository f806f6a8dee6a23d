import { describe, expect, test } from 'vitest'
import type { JudgedAnswer, OrderedSheet } from '../../../src/core/terms/index.ts'
import { runSheetPdf } from '../../../src/report/index.ts'
import { bare } from '../allTexts.ts'
import { hostileTexts } from '../hostileTexts.ts'
import { ReadPdf } from '../pdf/pdfText.ts'
import { inventedSheet, inventedSteps } from './inventedSheet.ts'

const answers: JudgedAnswer[] = [
  { id: 'forceZero', value: 0.01, state: 'outside', sentence: '', note: 'after an hour' },
  { id: 'sweep', value: true, state: 'within', sentence: '' },
]

const wordsOf = async (...args: Parameters<typeof runSheetPdf>): Promise<string> =>
  bare(new ReadPdf(await runSheetPdf(...args)).pages().join(' '))

test('shows cautions before their steps, ranges after them, and what to do otherwise', async () => {
  const words = await wordsOf(inventedSheet)
  const places = ['Thestagemoves.', 'Zerotheaxialforce.', '-3mNto3mN', 'Otherwise:Zeroagain.', 'Runthesteps.'].map(
    (part) => words.indexOf(part),
  )
  expect(places.every((place) => place > 0)).toBe(true)
  expect(places).toEqual([...places].sort((a, b) => a - b))
})

test('answers stand in their boxes with their notes', async () => {
  const words = await wordsOf(inventedSheet, answers)
  for (const part of ['✗10mN', '✓yes', 'afteranhour']) expect(words).toContain(part)
})

test('every step of the sweep is there, with one unit for all speeds', async () => {
  const words = await wordsOf({ ...inventedSheet, sweep: inventedSteps(40) })
  for (const speed of ['0.130', '1.06', '11.2', '14.6']) expect(words).toContain(speed)
  expect(words.match(/mm\/s/g)?.length).toBe(3) // once above each block
})

test('is tagged, archivable and has a title', async () => {
  const pdf = new ReadPdf(await runSheetPdf(inventedSheet))
  const [catalog] = pdf.heads(/\/Type \/Catalog/)
  expect(catalog).toMatch(/\/StructTreeRoot/)
  expect(catalog).toMatch(/\/Marked true/)
  expect(catalog).toMatch(/\/Lang \(en/)
  const metadata = pdf.stream(Number(/\/Metadata (\d+) 0 R/.exec(catalog)?.[1]))
  expect(metadata).toMatch(/<pdfaid:conformance>A<\/pdfaid:conformance>/)
  expect(metadata).toContain(': run sheet')
  for (const role of ['H1', 'H2', 'P', 'Table', 'TH', 'TD']) {
    expect(pdf.heads(new RegExp(`/S /${role}\\b`)).length, role).toBeGreaterThan(0)
  }
})

test('equal sheets give equal bytes, and other answers others', async () => {
  const [one, again, other] = await Promise.all([
    runSheetPdf(inventedSheet, answers),
    runSheetPdf(structuredClone(inventedSheet), answers),
    runSheetPdf(inventedSheet),
  ])
  expect(Buffer.compare(one, again)).toBe(0)
  expect(Buffer.compare(one, other)).not.toBe(0)
})

describe('what people wrote is text', () => {
  test.for(hostileTexts)('%s', async (text) => {
    const sheet: OrderedSheet = { ...inventedSheet, title: text, subtitle: text }
    const loose = (words: string): string => bare(words).replace(/[-\u2010]/g, '')
    const shown = loose(await wordsOf(sheet, [{ ...answers[0], note: text }]))
    expect(shown.split(loose(text)).length - 1).toBeGreaterThanOrEqual(3)
  })
})
