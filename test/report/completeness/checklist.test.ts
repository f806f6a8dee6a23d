import { describe, expect, test } from 'vitest'
import { checklist } from '../../../src/report/completeness/checklist.ts'
import { itemWords } from '../../../src/report/completeness/itemWords.ts'
import type { NoteKey, ReportInput } from '../../../src/report/index.ts'
import { noteKeys } from '../../../src/report/index.ts'
import { inventedInput } from '../inventedInput.ts'

const items = (changes: Partial<ReportInput> = {}) => {
  const list = checklist(inventedInput(changes))
  return Object.fromEntries(noteKeys.map((key, i) => [key, list[i]])) as Record<NoteKey, (typeof list)[number]>
}
const setupWith = (changes: Partial<ReportInput['setup']>) => ({ setup: { ...inventedInput().setup, ...changes } })

test('goes through all items, in our own words', () => {
  expect(checklist(inventedInput()).map(({ item }) => item)).toEqual(Object.values(itemWords))
})

test('what is lacking says where to fill it in', () => {
  for (const { state, text } of checklist(inventedInput({ texts: {} }))) {
    if (state !== 'present') expect(text).toMatch(/note “\w+”|into the setup|Record some|Run the same/)
  }
})

test('a note of people completes its item and stands in it', () => {
  const { cleaning, materials, damage } = items()
  expect(cleaning).toMatchObject({ state: 'present', text: 'Wiped with isopropanol and used within an hour.' })
  expect(materials.state).toBe('partly')
  expect(damage.state).toBe('lacking')
  const noted = items({ texts: { notes: { materials: 'Beech, 2K lacquer, 180 HV.', damage: '  ' } } })
  expect(noted.materials).toMatchObject({ state: 'present', text: expect.stringContaining('2K lacquer') })
  expect(noted.materials.text).toContain('steel ball on lacquer A on beech')
  expect(noted.damage.state).toBe('lacking')
})

describe('looks at what is there', () => {
  test('humidity and room', () => {
    expect(items().environment.text).toContain('Write run.roomTemperature into the setup.')
    const run = { ...inventedInput().setup.run, roomTemperature: 295.15 }
    expect(items(setupWith({ run })).environment.state).toBe('present')
  })

  test('roughness', () => {
    expect(items().surfaces.text).toContain('pair.lower.roughness')
    const { upper, lower } = inventedInput().setup.pair
    const pair = { upper: { ...upper, roughness: undefined }, lower }
    expect(items(setupWith({ pair })).surfaces.state).toBe('lacking')
  })

  test('liquid', () => {
    expect(items().lubricant).toMatchObject({ state: 'present', text: 'None: dry.' })
    expect(items(setupWith({ liquid: { name: 'oat drink' } })).lubricant).toMatchObject({
      state: 'partly',
      text: expect.stringContaining('liquid.viscosity'),
    })
  })

  test('pressure', () => {
    expect(items().contact.state).toBe('present')
    expect(items({ pressure: null }).contact.text).toContain('pair.lower.elasticModulus and pair.lower.poissonRatio')
  })

  test('zeroes', () => {
    const { reduction } = inventedInput()
    const states = (['blankBeforeAndAfter', 'blank', 'none'] as const).map(
      (from) => items({ reduction: { ...reduction, forceZero: { ...reduction.forceZero, from } } }).zeroes.state,
    )
    expect(states).toEqual(['present', 'partly', 'lacking'])
  })

  test('trace, alignment, turns and what was left out', () => {
    expect(items().trace.state).toBe('present')
    expect(items({ figures: [] }).trace.state).toBe('lacking')
    expect(items().alignment.text).toContain('1.2 %')
    const { reduction } = inventedInput()
    expect(items({ reduction: { ...reduction, ripple: [] } }).alignment.state).toBe('lacking')
    expect(items().turns.text).toContain('Three of five points')
    expect(items().exclusions.text).toContain('Two of five steps')
  })
})
