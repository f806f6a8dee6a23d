import { describe, expect, test } from 'vitest'
import { fitRecord, reduceFile } from '../../src/bench/index.ts'
import { reportInput } from '../../src/bench/reportInput.ts'
import type { Outside } from '../../src/core/terms/index.ts'
import { readRecord } from '../../src/io/index.ts'
import { reportHtml, reportOf, reportPdf, sectionNames } from '../../src/report/index.ts'

const outside: Outside = {
  now: () => new Date(0),
  progress: () => {},
  stop: { aborted: false },
  program: 'kufe, tested',
}
const reading = { units: [], columns: [], mappings: '' }

async function reported(file: string) {
  const setup = file.replace('.csv', '.setup.yaml')
  const reduced = await reduceFile({ file, setup, reading, options: { bandDraws: 60 } }, outside)
  const record = await readRecord(file)
  if (!reduced.ok || !record.ok) throw new Error(`${file} cannot be read`)
  const fitted = fitRecord(reduced.value, outside)
  return { fitted, input: reportInput(fitted, record.value.channels, { date: '2026-11-25' }) }
}

describe.each(['examples/lacquer/lacquer-a-1.csv', 'test/data/records/lost-contact.csv'])(
  'report of %s',
  async (file) => {
    const { fitted, input } = await reported(file)
    const content = reportOf(input)
    const html = reportHtml(content).replaceAll('\u00a0', ' ')

    test('has every section, and a picture of every kind for light and dark pages', () => {
      // What only a lab knows is not there, and nothing vibrates, wears or changes in these records.
      const ofLabs = ['asFound', 'beyond', 'limit', 'rigWatch']
      expect(content.sections.map(({ name }) => name)).toEqual(sectionNames.filter((name) => !ofLabs.includes(name)))
      expect(input.figures.map(({ name }) => name)).toEqual([
        'fixture',
        'strip',
        'turnMap',
        'curve',
        'budget',
        'remarks',
      ])
      for (const { svg, darkSvg } of input.figures)
        for (const one of [svg, darkSvg]) expect(one).toMatch(/^<svg [\s\S]*<desc/)
    })

    test('no id is given twice on the page', () => {
      const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)
      expect(ids.length).toBe(new Set(ids).size)
    })

    test('holds the sentence of every remark', () => {
      const remarks = [...fitted.reduction.points.flatMap((point) => point.remarks), ...fitted.remarks]
      expect(remarks.length).toBeGreaterThan(0)
      for (const { sentence, next } of remarks) {
        expect(html).toContain(sentence)
        expect(html).toContain(next)
      }
    })

    test('holds one line for every point and no number that is none', () => {
      const points = content.sections.find(({ name }) => name === 'points')?.blocks[0]
      expect(points?.kind === 'table' && points.table.rows.length).toBe(fitted.reduction.points.length)
      expect(html.replace(/<svg[\s\S]*?<\/svg>/g, '')).not.toMatch(/NaN|Infinity|undefined|\bnull\b/)
    })

    test('can be set, with pictures as vectors', async () => {
      const pdf = Buffer.from(await reportPdf(content)).toString('latin1')
      expect(pdf).toMatch(/^%PDF-1\.7/)
      // The cells of the turn map are the one picture that is made of dots.
      expect(pdf.match(/\/Subtype \/Image/g)?.length ?? 0).toBeLessThanOrEqual(2)
    })
  },
)
