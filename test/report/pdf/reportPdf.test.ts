import { describe, expect, test } from 'vitest'
import { reportOf, reportPdf } from '../../../src/report/index.ts'
import { allTexts, bare } from '../allTexts.ts'
import { hostileTexts } from '../hostileTexts.ts'
import { inventedInput, picture, point, reduction } from '../inventedInput.ts'
import { ReadPdf } from './pdfText.ts'

const content = reportOf(inventedInput())
const bytes = await reportPdf(content)
const pdf = new ReadPdf(bytes)

/** Without hyphens, since lines are broken at them. */
const loose = (text: string): string => bare(text).replaceAll('-', '').replaceAll('\u2010', '')

test('shows every text of the content', () => {
  const feet = /lacquera1\.csv·d9f729bf56d2\d+\/\d+/g
  const shown = pdf.pages().map(loose).join('').replace(feet, '') + loose(content.identity)
  for (const text of allTexts(content)) expect(shown).toContain(loose(text))
})

test('counts its pages at the foot of each and tells one report from another', () => {
  const pages = pdf.pages()
  expect(pages.length).toBeGreaterThan(2)
  for (const [i, page] of pages.entries()) {
    expect(bare(page)).toContain(`${i + 1}/${pages.length}`)
    expect(bare(page)).toContain('lacquer-a-1.csv·d9f729bf56d2')
  }
})

test('is tagged, has a language and a title, and claims PDF/A-3a', () => {
  const [catalog] = pdf.heads(/\/Type \/Catalog/)
  expect(catalog).toMatch(/\/StructTreeRoot/)
  expect(catalog).toMatch(/\/Marked true/)
  expect(catalog).toMatch(/\/Lang \(en/)
  expect(catalog).toMatch(/\/OutputIntents/)
  const metadata = pdf.stream(Number(/\/Metadata (\d+) 0 R/.exec(catalog)?.[1]))
  expect(metadata).toMatch(/<pdfaid:part>3<\/pdfaid:part>/)
  expect(metadata).toMatch(/<pdfaid:conformance>A<\/pdfaid:conformance>/)
  expect(metadata).toContain('lacquer A, mounting 1: friction report')
  for (const role of ['H1', 'H2', 'P', 'Figure', 'Table', 'TH', 'TD', 'Caption', 'L']) {
    expect(pdf.heads(new RegExp(`/S /${role}\\b`)).length, role).toBeGreaterThan(0)
  }
})

test('a picture is heard as its description and drawn as lines, not as dots', () => {
  const figures = pdf.heads(/\/S \/Figure\b/)
  expect(figures.some((figure) => figure.includes('/Alt (fixture. what fixture shows)'))).toBe(true)
  expect(pdf.heads(/\/Subtype \/Image/)).toEqual([])
})

test('all fonts are inside', () => {
  const fonts = pdf.heads(/\/Type \/FontDescriptor/)
  expect(fonts.length).toBeGreaterThan(2)
  for (const font of fonts) {
    expect(font).toMatch(/\/FontFile3/)
    expect(font).toMatch(/\+Source(Sans3|Serif4)-/)
  }
})

describe('equal content gives equal bytes', () => {
  test('again, and many at once', async () => {
    const others = [reportOf(inventedInput({ texts: {} })), content, reportOf(inventedInput({ curve: null })), content]
    const all = await Promise.all(others.map(reportPdf))
    expect(Buffer.compare(all[1], bytes)).toBe(0)
    expect(Buffer.compare(all[3], bytes)).toBe(0)
    expect(Buffer.compare(all[0], all[2])).not.toBe(0)
  })

  test('the date is the one of the report, never the clock', () => {
    expect(Buffer.from(bytes).toString('latin1')).toContain('D:20261125')
  })

  test('without a date the file bears the first of all days, as an archive copy must bear one', async () => {
    const undated = await reportPdf(reportOf(inventedInput({ texts: {} })))
    expect(Buffer.from(undated).toString('latin1')).toMatch(/CreationDate \(D:19700101/)
  })
})

describe('what people wrote is text', () => {
  test.for(hostileTexts)('%s', async (text) => {
    const hostile = reportOf(
      inventedInput({
        setup: { ...inventedInput().setup, run: { sample: text, note: text, operator: text } },
        record: { file: text, rows: 10 },
        figures: [{ ...picture('curve'), caption: text }],
        texts: { question: text, author: text, notes: { damage: text } },
      }),
    )
    const shown = loose(new ReadPdf(await reportPdf(hostile)).pages().join(' '))
    // Title, sample, note, question, damage, caption, foot of each page.
    expect(shown.split(loose(text)).length - 1).toBeGreaterThanOrEqual(7)
  })

  test('letters that the fonts lack are written as their codes', async () => {
    const question = 'Is 燕麦 smoother? 😀 \u0007\u0000 e\u0301 \ud800'
    const shown = bare(new ReadPdf(await reportPdf(reportOf(inventedInput({ texts: { question } })))).pages().join(' '))
    expect(shown).toContain('Is‹U+71D5›‹U+9EA6›smoother?‹U+1F600›')
  })
})

test('a long table repeats its head on every page that it reaches', async () => {
  const points = Array.from({ length: 150 }, (_, i) => point({ step: i + 1, slidingSpeed: 0.001 * (i + 1) }))
  const long = new ReadPdf(await reportPdf(reportOf(inventedInput({ reduction: { ...reduction, points } }))))
  const pages = long.pages().filter((page) => bare(page).includes('friction±own'))
  expect(pages.length).toBeGreaterThan(2)
})

test('a date that is no day is a mistake of ours', async () => {
  const wrong = { ...content, date: '2026-02-30' }
  await expect(async () => reportPdf(wrong)).rejects.toThrow('date must be a day')
})

test('a picture without a size is a mistake of ours', async () => {
  const figures = [{ ...picture('curve'), svg: '<svg/>' }]
  await expect(async () => reportPdf(reportOf(inventedInput({ figures })))).rejects.toThrow('width and height')
})

test('a picture that cannot be read fails its own report and no other', async () => {
  const broken = { ...picture('curve'), svg: picture('curve').svg.replace('<path', '<path d="M0 0" <') }
  const bad = reportPdf(reportOf(inventedInput({ figures: [broken] })))
  const good = reportPdf(content)
  await expect(bad).rejects.toThrow('the report cannot be set')
  expect(Buffer.compare(await good, bytes)).toBe(0)
})
