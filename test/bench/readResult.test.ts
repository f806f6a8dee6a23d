import { expect, test } from 'vitest'
import { fitRecord, type ReducedRecord, reduceFile, resultText } from '../../src/bench/index.ts'
import { readResult } from '../../src/bench/readResult.ts'
import { reductionInWords } from '../../src/cli/show/reductionInWords.ts'
import { capturedDesk } from '../cli/capturedDesk.ts'
import { inventedRecord } from '../cli/inventedRecord.ts'

const { screen, outside } = capturedDesk()

async function reduced(stem: string): Promise<ReducedRecord> {
  const reading = { units: [], columns: [], mappings: '' }
  const args = { file: `${stem}.csv`, setup: `${stem}.setup.yaml`, reading, options: { bandDraws: 100 } }
  const record = await reduceFile(args, outside)
  if (!record.ok) throw new Error(record.problems.map(({ what }) => what).join(' '))
  return fitRecord(record.value, outside)
}

test.for(['examples/lacquer/wax', 'examples/lacquer/silicone-spray', 'test/data/records/lost-contact'])(
  '%s comes back from its text: the same text again, and the same words for people',
  async (stem) => {
    const record = await reduced(stem)
    const back = readResult(resultText(record), record.setup)
    if (!back.ok) throw new Error('it is a result')
    expect(resultText(back.value)).toBe(resultText(record))
    expect(back.value.options).toEqual(record.options)
    expect(reductionInWords(back.value, screen)).toBe(reductionInWords(record, screen))
  },
)

test('what JSON cannot say comes back as NaN where a number is due', () => {
  const record = inventedRecord()
  const [first, ...rest] = record.reduction.points
  const strange = {
    ...record,
    reduction: {
      ...record.reduction,
      points: [{ ...first, turns: Number.NaN }, ...rest],
      noiseCorrelation: Number.NaN,
    },
  }
  const back = readResult(resultText(strange), record.setup)
  expect(back.ok && back.value.reduction.points[0].turns).toBeNaN()
  expect(back.ok && back.value.reduction.noiseCorrelation).toBeNaN()
})

test.for(['', '{', '[]', 'null', '{"schemaVersion":"0"}'])('%j is no result', (text) => {
  const read = readResult(text, inventedRecord().setup)
  expect(read).toMatchObject({ ok: false, problems: [{ kind: 'resultUnreadable' }] })
})
