import { describe, expect, test } from 'vitest'
import { reportOf, sectionNames } from '../../src/report/index.ts'
import { allTexts } from './allTexts.ts'
import { forceZeroMissing, inventedInput, points } from './inventedInput.ts'

const content = reportOf(inventedInput())
const texts = allTexts(content)
const section = (name: string, of = content) => of.sections.find((one) => one.name === name)

test('holds every section in its order when there is something to say', () => {
  expect(content.sections.map(({ name }) => name)).toEqual(sectionNames)
  expect(content.sections.every(({ blocks }) => blocks.length > 0)).toBe(true)
})

test('leaves out what has nothing to say, and says where a question or a remark is missing', () => {
  const calm = points.map((point) => ({ ...point, remarks: [], trusted: true }))
  const bare = reportOf(
    inventedInput({
      curve: null,
      remarks: [],
      figures: [],
      beyond: [],
      texts: {},
      reduction: { ...inventedInput().reduction, points: calm },
    }),
  )
  expect(bare.sections.map(({ name }) => name)).toEqual(
    sectionNames.filter((name) => !['record', 'curve', 'beyond', 'asFound', 'limit', 'rigWatch'].includes(name)),
  )
  expect(section('remarks', bare)?.blocks).toEqual([{ kind: 'paragraph', text: 'Nothing was found to remark on.' }])
  expect(section('question', bare)?.blocks[0]).toMatchObject({ text: expect.stringMatching(/^No question/) })
  expect(bare).toMatchObject({ author: null, date: null })
})

test('what was found at the rig: counts, what lay outside, every check with its reading', () => {
  const blocks = section('asFound')?.blocks ?? []
  expect(blocks[0]).toMatchObject({
    text: 'None of two checks came out as wanted, one did not, one is not answered. Run sheet “Lacquer <A> & "B"”, kept by AN on 2026-11-25.',
  })
  expect(blocks[1]).toEqual({ kind: 'list', items: ['Axial force: 10 mN. Zero again.'] })
  expect(blocks[2]).toMatchObject({
    table: {
      rows: [
        ['axial force', '-3 mN to 3 mN', '✗ 10 mN', 'draught'],
        ['all steps ran', 'yes', '–', ''],
      ],
    },
  })
})

test('numbers figures and tables as they come', () => {
  const blocks = content.sections.flatMap((one) => one.blocks)
  expect(blocks.flatMap((block) => (block.kind === 'figure' ? [block.figure.number] : []))).toEqual([1, 2, 3, 4, 5, 6])
  const numbers = blocks.flatMap((block) => (block.kind === 'table' ? [block.table.number] : []))
  expect(numbers).toEqual(numbers.map((_, i) => i + 1))
})

test('tells those who hear it what a picture shows', () => {
  const figures = content.sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'figure' ? [block.figure.words] : [])),
  )
  expect(figures[0]).toBe('fixture. what fixture shows')
})

describe('remarks', () => {
  const everyRemark = [...points.flatMap(({ remarks }) => remarks), forceZeroMissing]

  test.for(everyRemark)('holds the sentence and the next step of $kind', ({ sentence, next }) => {
    expect(texts.some((text) => text.includes(sentence))).toBe(true)
    expect(texts).toContain(next)
  })

  test('says the step where sentences differ from step to step, and the heaviest kind first', () => {
    const [block] = section('remarks')?.blocks.filter(({ kind }) => kind === 'remarks') ?? []
    const remarks = block?.kind === 'remarks' ? block.remarks : []
    expect(remarks.map(({ words, weight, letter, where }) => [words, weight, letter, where])).toEqual([
      ['contact lost', 'stops', 'a', 'step 3'],
      ['under one turn', 'caution', 'b', 'steps 1, 2'],
      ['no zero of the axial force', 'caution', '', ''],
    ])
    expect(remarks[1].sentences).toEqual([
      'Step 1: The step covers 0.4 of a turn.',
      'Step 2: The step covers 0.9 of a turn.',
    ])
  })

  test('says at the head what must not be used', () => {
    expect(content.summary).toContainEqual('Two steps of five must not be used as they stand (contact lost).')
  })
})

test('points stand one a line, with the letters of the remarks and a word for those that the curve leaves out', () => {
  const [block] = section('points')?.blocks ?? []
  if (block?.kind !== 'table') throw new Error('no table')
  const { columns, rows } = block.table
  const cell = (row: number, head: string): string => rows[row][columns.findIndex((column) => column.head === head)]
  expect(rows).toHaveLength(points.length)
  expect(cell(0, 'friction ± own')).toBe('0.26200 ± 0.00050')
  expect(cell(0, 'speed')).toBe('1.000')
  expect(cell(3, 'friction ± own')).toBe('none')
  expect(rows.map((_, row) => cell(row, 'in the curve'))).toEqual(['yes', 'yes', 'no', 'no', 'yes'])
  expect(rows.map((_, row) => cell(row, 'remarks'))).toEqual(['b', 'b', 'a', '', ''])
  expect(cell(4, 'temp.')).toBe('23.0')
})

test('features have their intervals, an open end is called open, and none says why', () => {
  const table = section('curve')?.blocks.find((block) => block.kind === 'table')
  if (table?.kind !== 'table') throw new Error('no table')
  expect(table.table.rows).toEqual([
    ['level of the slow end', 'none', '–', '–', 'a power law has no boundary plateau'],
    ['speed of least friction', '12.30 mm/s', '10.10 mm/s', 'open', 'least friction inside the data'],
  ])
})

test('provenance names every checksum whole, the program, the seed, the options and how to recompute', () => {
  const { origin } = inventedInput()
  const [, block] = section('provenance')?.blocks ?? []
  if (block?.kind !== 'facts') throw new Error('no facts')
  const facts = Object.fromEntries(block.facts.map(({ term, value }) => [term, value]))
  expect(facts['SHA-256 of its bytes']).toBe(origin.raw)
  expect(facts['SHA-256 of the setup']).toBe(origin.setup)
  expect(facts.Program).toBe('kufe 0.1.0')
  expect(facts.Seed).toBe('1')
  expect(facts.Options).toContain('settleTolerance 0.02')
  expect(facts['To recompute']).toBe('kufe verify d9f729bf56d2')
})

test('cautions defer to manual, local rules and licensed people, and warn of what is on the rig', () => {
  const cautions = (setup: Partial<ReturnType<typeof inventedInput>['setup']>): string =>
    JSON.stringify(section('cautions', reportOf(inventedInput({ setup: { ...inventedInput().setup, ...setup } }))))
  const cool = cautions({})
  expect(cool).toMatch(/manual of the instrument/)
  expect(cool).toMatch(/local rules/)
  expect(cool).toMatch(/licensed/)
  expect(cool).toMatch(/no safety class/)
  expect(cool).not.toMatch(/hot enough to burn/)
  expect(cautions({ run: { temperature: 423.15 } })).toMatch(/hot enough to burn/)
  expect(cautions({ liquid: { name: 'oat drink' } })).toMatch(/splashes/)
})

test('equal input gives equal content', () => {
  expect(JSON.stringify(reportOf(inventedInput()))).toBe(JSON.stringify(content))
})

test('a record without a single point still gives a report', () => {
  const reduction = { ...inventedInput().reduction, points: [], steps: [] }
  const empty = reportOf(inventedInput({ reduction, curve: null, remarks: [], budget: [] }))
  expect(section('points', empty)).toBeUndefined()
  expect(allTexts(empty).join(' ')).not.toMatch(/NaN|Infinity|undefined/)
})

test('the verdict on the limit and every open alarm are told, in their sections and to hurried readers', () => {
  expect(section('limit')?.blocks[0]).toMatchObject({ text: expect.stringContaining('lacquer A passes') })
  expect(section('limit')?.blocks[1]).toMatchObject({ facts: [{ term: 'Limit' }, { term: 'Decision rule' }] })
  expect(section('rigWatch')?.blocks[2]).toEqual({
    kind: 'list',
    items: ['wax, 2026-11-24: one value beyond three standard deviations (wax-1f00-beyond-three)'],
  })
  expect(content.summary).toContain('lacquer A passes: it keeps to a friction of at most 0.12 at 10 mm/s.')
  expect(content.summary).toContain('One alarm of the watch over the rig is open: nobody has said yet what it was.')
  const silent = reportOf(inventedInput({ texts: { rigWatch: { watched: ['wax: 20 measurements.'], open: [] } } }))
  expect(section('rigWatch', silent)?.blocks).toEqual([{ kind: 'list', items: ['wax: 20 measurements.'] }])
  expect(silent.summary.join(' ')).not.toContain('alarm')
})
