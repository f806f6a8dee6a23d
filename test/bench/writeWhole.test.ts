import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { writeNew, writeWhole } from '../../src/bench/writeWhole.ts'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-write-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

test('writes into folders that it makes, over what was there, and leaves no half file', () => {
  const file = join(folder, 'a', 'b', 'curve.svg')
  expect(writeWhole(file, 'one')).toEqual({ ok: true, value: file })
  expect(writeWhole(file, new Uint8Array([116, 119, 111]))).toEqual({ ok: true, value: file })
  expect(readFileSync(file, 'utf8')).toBe('two')
  expect(readdirSync(join(folder, 'a', 'b'))).toEqual(['curve.svg'])
})

test('what was there stays when the new name cannot be had', () => {
  const file = join(folder, 'curve.svg')
  mkdirSync(join(file, 'inside'), { recursive: true })
  const written = writeWhole(file, 'new')
  expect(written).toMatchObject({ ok: false, problems: [{ class: 'wrongUse', place: { file } }] })
  expect(readdirSync(folder)).toEqual(['curve.svg'])
})

test('a file where a folder is needed', () => {
  writeFileSync(join(folder, 'a'), '')
  expect(writeWhole(join(folder, 'a', 'b.svg'), '')).toMatchObject({ ok: false, problems: [{ kind: 'fileExists' }] })
})

test.skipIf(process.getuid?.() === 0)(
  'a folder that may not be written into (not seen by root, who may do anything)',
  () => {
    chmodSync(folder, 0o500)
    expect(writeWhole(join(folder, 'b.svg'), '')).toMatchObject({ ok: false, problems: [{ kind: 'fileNotAllowed' }] })
    chmodSync(folder, 0o700)
  },
)

test('writeNew keeps what is there', () => {
  const file = join(folder, 'setup.yaml')
  expect(writeNew(file, 'first', false).ok).toBe(true)
  expect(writeNew(file, 'second', false)).toMatchObject({
    ok: false,
    problems: [{ kind: 'fileExists', class: 'wrongUse' }],
  })
  expect(readFileSync(file, 'utf8')).toBe('first')
  expect(writeNew(file, 'second', true).ok).toBe(true)
  expect(readFileSync(file, 'utf8')).toBe('second')
})
