import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import {
  answersFromText,
  keepMapping,
  keptMappingNames,
  type NamedMapping,
  readMapping,
} from '../../../src/io/index.ts'

let folder = ''
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'kufe-test-'))
})
afterEach(() => rm(folder, { recursive: true }))

const mapping: NamedMapping = {
  name: 'Rig 2, old export'.replace(',', ''),
  columns: { TIME: { unit: 's' }, FF: { channel: 'frictionForce', unit: 'mN' }, Note: { channel: null } },
  separator: ';',
  decimalMark: ',',
  encoding: 'windows-1252',
  sheet: 2,
}

test('comes back as it was kept', async () => {
  const deep = join(folder, 'a', 'b')
  expect(await keepMapping(deep, mapping)).toEqual({ ok: true, value: join(deep, 'Rig 2 old export.json') })
  expect(await readMapping(deep, mapping.name)).toEqual({ ok: true, value: mapping })
  expect(await keptMappingNames(deep)).toEqual(['Rig 2 old export'])
  expect(await readdir(deep)).toEqual(['Rig 2 old export.json'])
})

test('may be kept again', async () => {
  await keepMapping(folder, mapping)
  await keepMapping(folder, { name: mapping.name, columns: {} })
  expect(await readMapping(folder, mapping.name)).toEqual({ ok: true, value: { name: mapping.name, columns: {} } })
})

describe('names that would lead elsewhere are refused', () => {
  test.for([
    '',
    '.',
    '..',
    '../x',
    'a/b',
    'a\\b',
    '/etc/x',
    '.hidden',
    ' x',
    'x ',
    'x.',
    'a\u0000b',
    'a\nb',
    'x'.repeat(65),
    'CON:',
    '-rf',
  ])('"%s"', async (name) => {
    expect(await keepMapping(folder, { name, columns: {} })).toMatchObject({
      ok: false,
      problems: [{ kind: 'mappingNameRefused', class: 'wrongUse' }],
    })
    expect(await readMapping(folder, name)).toMatchObject({ ok: false, problems: [{ kind: 'mappingNameRefused' }] })
    expect(await readdir(folder)).toEqual([])
  })
})

test.for(['x', 'Ölprüfstand 3', 'rig_2.old-export', 'a'.repeat(64)])('"%s" is a good name', async (name) => {
  expect((await keepMapping(folder, { name, columns: {} })).ok).toBe(true)
})

test('a name that is not kept suggests the nearest', async () => {
  await keepMapping(folder, { name: 'workshop', columns: {} })
  expect(await readMapping(folder, 'workshpo')).toMatchObject({
    ok: false,
    problems: [{ kind: 'mappingUnreadable', mend: 'Did you mean "workshop"?' }],
  })
  expect(await readMapping(join(folder, 'none'), 'x')).toMatchObject({
    ok: false,
    problems: [{ kind: 'mappingUnreadable' }],
  })
})

describe('a file that says something else is refused', () => {
  test.for([
    '',
    '{',
    '[]',
    '{}',
    '{"columns":[]}',
    '{"columns":{"a":1}}',
    '{"columns":{"a":{"channel":"mass"}}}',
    '{"columns":{"a":{"unit":5}}}',
    'null',
  ])('%s', async (text) => {
    await writeFile(join(folder, 'x.json'), text)
    expect(await readMapping(folder, 'x')).toMatchObject({
      ok: false,
      problems: [{ kind: 'mappingUnreadable', class: 'wrongUse' }],
    })
  })
})

test('a folder that cannot be written is said', async () => {
  await writeFile(join(folder, 'file'), '')
  expect(await keepMapping(join(folder, 'file'), mapping)).toMatchObject({
    ok: false,
    problems: [{ kind: 'mappingUnreadable' }],
  })
})

describe('answers as a terminal hands them over', () => {
  test('are read', () => {
    expect(answersFromText({ units: ['Torque=mN.m', 'a=b=s'], columns: ['Torque=torque', 'Torque 2=none'] })).toEqual({
      ok: true,
      value: { Torque: { unit: 'mN.m', channel: 'torque' }, 'a=b': { unit: 's' }, 'Torque 2': { channel: null } },
    })
  })

  test('or all refused at once', () => {
    const outcome = answersFromText({ units: ['mN.m', '=s', 'x='], columns: ['Torque=mass'] })
    expect(outcome.ok ? [] : outcome.problems.map(({ kind, class: sort }) => [kind, sort])).toEqual(
      Array.from({ length: 4 }, () => ['optionUnreadable', 'wrongUse']),
    )
  })
})
