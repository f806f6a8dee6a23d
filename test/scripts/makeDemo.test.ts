import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { makeDemo } from '../../scripts/makeDemo.ts'
import { demoFiles, demoRecords } from '../../src/bench/demoRecords.ts'
import { readSetup } from '../../src/io/index.ts'

const examples = new URL('../../examples/', import.meta.url).pathname

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-demo-'))
  makeDemo(folder)
})
afterAll(() => rmSync(folder, { recursive: true }))

describe.each(demoRecords)('$name', (record) => {
  const shipped = demoFiles(record)

  test.for(['record', 'setup', 'truth'] as const)('%s is remade byte for byte', (part) => {
    const fresh = readFileSync(demoFiles(record, folder)[part])
    expect(fresh.equals(readFileSync(shipped[part]))).toBe(true)
  })

  test('every file says that it is invented', () => {
    for (const file of Object.values(shipped)) expect(readFileSync(file, 'latin1').slice(0, 200)).toMatch(/invented/i)
  })

  test('record under 250 kB, setup reads', () => {
    expect(statSync(shipped.record).size).toBeLessThan(250_000)
    expect(readSetup(readFileSync(shipped.setup, 'utf8'), 'setup').ok).toBe(true)
  })
})

test('nothing else lies in the folders, and all of it is under 2 MB', () => {
  let bytes = 0
  for (const scenario of new Set(demoRecords.map((record) => record.scenario))) {
    const known = demoRecords
      .filter((record) => record.scenario === scenario)
      .flatMap((record) => Object.values(demoFiles(record)))
    const there = readdirSync(join(examples, scenario)).map((name) => join(examples, scenario, name))
    const beside = /(README\.md|question\.yaml|\.flow\.csv|\.material\.yaml)$/
    expect(there.filter((file) => !beside.test(file)).sort()).toEqual(known.sort())
    for (const file of there) bytes += statSync(file).size
  }
  expect(bytes).toBeLessThan(2e6)
})
