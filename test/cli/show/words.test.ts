import { describe, expect, test } from 'vitest'
import { fitInWords } from '../../../src/cli/show/fitInWords.ts'
import { reductionInWords } from '../../../src/cli/show/reductionInWords.ts'
import { nothing, trouble, twelve, twentyEight, two } from '../../figure/inventedCurves.ts'
import { capturedDesk } from '../capturedDesk.ts'
import { inventedRecord } from '../inventedRecord.ts'

const { screen } = capturedDesk()
const data = [
  { name: 'twelve', data: twelve },
  { name: 'twenty-eight', data: twentyEight },
  { name: 'two', data: { ...two, window: nothing.window } },
  { name: 'trouble', data: trouble },
  { name: 'nothing', data: nothing },
]

// Regression snapshots of what people read: a change is a diff that a reviewer sees.
test.for(data)('a reduction for people: $name', async ({ name, data }) => {
  await expect(reductionInWords(inventedRecord(data), screen)).toMatchFileSnapshot(`golden/reduce-${name}.txt`)
})

test('a fit for people', async () => {
  await expect(fitInWords(inventedRecord(), screen)).toMatchFileSnapshot('golden/fit-twelve.txt')
})

describe('whatever the terminal', () => {
  test.for([60, 72, 80, 120])('prose and plot keep within %d columns', (width) => {
    const text = reductionInWords(inventedRecord(trouble), { ...screen, width })
    const plot = text.slice(text.indexOf('Friction coefficient'), text.indexOf('Uncertainty'))
    const long = plot.split('\n').filter((line) => [...line].length > width)
    expect(long).toEqual([])
  })

  test('without colour there is no escape, and foreign text brings none in', () => {
    expect(reductionInWords(inventedRecord(), screen)).not.toContain('\u001b')
    expect(reductionInWords(inventedRecord(), { ...screen, colour: true })).toContain('\u001b[1m')
  })

  test('colour adds nothing but colour', () => {
    const coloured = reductionInWords(inventedRecord(trouble), { ...screen, colour: true })
    // biome-ignore lint/suspicious/noControlCharactersInRegex: escapes are what is taken away
    const plain = coloured.replace(/\u001b\[[\d;]*m/g, '').replaceAll('M·[31m', 'M·[31m')
    expect(plain).toBe(reductionInWords(inventedRecord(trouble), screen))
  })

  test('a plot without Unicode is ASCII', () => {
    const text = reductionInWords(inventedRecord(), { ...screen, unicode: false })
    const plot = text.slice(text.indexOf('Friction coefficient'), text.indexOf('sliding speed'))
    expect(plot).toMatch(/^[\x20-\x7e\n]+$/)
    expect(plot).toContain('o')
  })
})

test('friction shows as many digits as its uncertainty decides', () => {
  // JCGM 100:2008, 7.2.6: at most two digits of the uncertainty, and the value to the same place.
  const text = reductionInWords(inventedRecord(), screen)
  const values = [...text.matchAll(/ (0\.\d+) +± (0\.\d+)/g)]
  expect(values).toHaveLength(12)
  for (const [, value = '', uncertainty = ''] of values) {
    expect(value.length).toBe(uncertainty.length)
    expect(uncertainty.replace(/^0\.0*/, '')).toMatch(/^\d\d$/)
  }
})

test('the two hard questions are answered, and the dominating share is named', () => {
  const text = reductionInWords(inventedRecord(), screen)
  expect(text).toContain(twelve.window?.sentence)
  expect(text).toContain(twelve.window?.plateau.sentence)
  expect(text.replace(/\s+/g, ' ')).toContain('made by scale of the torque 69 %, scale of the axial force 31 %')
})
