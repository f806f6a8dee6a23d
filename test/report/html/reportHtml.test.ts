import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { escapeHtml } from '../../../src/report/html/escapeHtml.ts'
import { type ReportContent, reportHtml, reportOf } from '../../../src/report/index.ts'
import { allTexts, bare } from '../allTexts.ts'
import { hostileTexts } from '../hostileTexts.ts'
import { inventedInput, picture } from '../inventedInput.ts'

const content = reportOf(inventedInput())
const html = reportHtml(content)

const entities: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
}

/** What a browser shows: style and pictures away, tags away, entities read, once. */
const shown = (page: string): string =>
  bare(
    page
      .replace(/<style>[\s\S]*?<\/style>|<svg xmlns[\s\S]*?<\/svg>/g, '')
      .replace(/<[^>]*>/g, ' ')
      .replace(/&(amp|lt|gt|quot|#39);/g, (entity) => entities[entity]),
  )

test('shows every text of the content', () => {
  const page = shown(html)
  for (const text of allTexts(content)) expect(page).toContain(bare(text))
})

test('every section has its heading and can be linked to', () => {
  for (const { name, heading } of content.sections) {
    expect(html).toMatch(new RegExp(`<section id="${name}"[^>]* aria-labelledby="${name}-heading">`))
    expect(html).toContain(`<h2 id="${name}-heading">${escapeHtml(heading)}</h2>`)
  }
})

test('needs nothing else: no script, nothing fetched', () => {
  expect(html).not.toMatch(/<script|<link|<iframe|<object|javascript:| on\w+=/i)
  expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|src=|url\(|@import|href=/i)
})

test('every tag that is opened is closed, in order', () => {
  const open: string[] = []
  for (const [, end, name, empty] of html.matchAll(/<(\/?)([a-z][a-z0-9]*)(?:\s[^>]*?)?(\/?)>/g)) {
    if (empty === '/' || ['meta'].includes(name)) continue
    if (end === '') open.push(name)
    else expect(open.pop()).toBe(name)
  }
  expect(open).toEqual([])
})

test('a picture for dark pages stands beside the light one; without one it keeps its paper', () => {
  const dark = { ...picture('curve'), darkSvg: picture('curve', 'in the dark').svg }
  const page = reportHtml(reportOf(inventedInput({ figures: [picture('fixture'), dark] })))
  expect(page.match(/<div class="(paper|light|dark)">/g)).toEqual([
    '<div class="paper">',
    '<div class="light">',
    '<div class="dark">',
  ])
})

test('looks: light and dark by the reader, prints on A4, tabular figures, no colour alone', () => {
  expect(html).toContain('@media (prefers-color-scheme:dark)')
  expect(html).toContain('@page{size:A4')
  expect(html).toContain('tabular-nums')
  expect(html).toMatch(/role="img" aria-label="usable with care"/)
})

describe('what people wrote is text', () => {
  const withText = (text: string): ReportContent =>
    reportOf(
      inventedInput({
        setup: { ...inventedInput().setup, run: { sample: text, note: text, operator: text } },
        record: { file: text, rows: 10 },
        texts: { question: text, author: text, notes: { damage: text } },
      }),
    )

  test.for(hostileTexts)('%s', (text) => {
    const hostile = withText(text)
    const page = reportHtml(hostile)
    expect(page).not.toMatch(/<script|<img/)
    expect(shown(page)).toContain(bare(text))
    expect(page.match(/<[a-z]+/g)).toEqual(reportHtml(withText('plain')).match(/<[a-z]+/g))
  })

  test('escaping can be undone, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('&', '<', '>', '"', "'", 'amp;', '#39;', 'a', ' ', 'µ', '😀') }),
        (text) => {
          const escaped = escapeHtml(text)
          expect(escaped).not.toMatch(/[<>"']/)
          expect(escaped.replace(/&(amp|lt|gt|quot|#39);/g, (entity) => entities[entity])).toBe(text)
        },
      ),
    )
  })

  test('what HTML forbids is replaced', () => {
    expect(escapeHtml('a\u0000b\u001fc\u009fd\ud800')).toBe('a\ufffdb\ufffdc\ufffdd\ufffd')
    expect(escapeHtml('a\tb\nc')).toBe('a\tb\nc')
  })
})

test('equal content gives equal bytes', () => {
  expect(reportHtml(reportOf(inventedInput()))).toBe(html)
})
