import { appendFileSync, rmSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { beforeEach, expect, test } from 'vitest'
import { StillFiles } from '../../../src/bench/lab/stillFiles.ts'
import { temporaryFolder } from './labs.ts'

let folder: string
let files: StillFiles
const at = (name: string): string => join(folder, name)
/** Looks at a second, with ten seconds of patience. */
const look = (second: number): string[] => files.look(1000 * second, 10_000).map((file) => basename(file))

beforeEach(() => {
  folder = temporaryFolder()
  files = new StillFiles(folder, undefined)
})

test('a file is told once, when it has been the same for long enough', () => {
  writeFileSync(at('a.csv'), '1')
  expect([look(0), look(5), look(9.9), look(10), look(20)]).toEqual([[], [], [], ['a.csv'], []])
})

test('a file that grows is waited for, as often as it grows', () => {
  writeFileSync(at('a.csv'), '1')
  expect([look(0), look(8)]).toEqual([[], []])
  appendFileSync(at('a.csv'), '2')
  expect([look(12), look(21)]).toEqual([[], []])
  appendFileSync(at('a.csv'), '3')
  expect([look(23), look(32.9), look(33)]).toEqual([[], [], ['a.csv']])
})

test('one that grows after it was taken is told again', () => {
  writeFileSync(at('a.csv'), '1')
  expect([look(0), look(10)]).toEqual([[], ['a.csv']])
  appendFileSync(at('a.csv'), '2')
  expect([look(20), look(30)]).toEqual([[], ['a.csv']])
})

test('an empty file, and what is no record by its name, are not looked at', () => {
  writeFileSync(at('a.csv'), '')
  writeFileSync(at('notes.md'), 'x')
  expect([look(0), look(20)]).toEqual([[], []])
})

test('a setup that comes later has its record told again', () => {
  writeFileSync(at('a.csv'), '1')
  expect([look(0), look(10)]).toEqual([[], ['a.csv']])
  writeFileSync(at('a.setup.yaml'), 'x')
  expect([look(20), look(30), look(40)]).toEqual([[], ['a.csv'], []])
})

test('one that goes and comes back is waited for again, and a folder that is gone has no files', () => {
  writeFileSync(at('a.csv'), '1')
  look(0)
  rmSync(at('a.csv'))
  expect(look(9)).toEqual([])
  writeFileSync(at('a.csv'), '1')
  expect([look(10), look(19), look(20)]).toEqual([[], [], ['a.csv']])
  rmSync(folder, { recursive: true })
  expect(look(30)).toEqual([])
})

test('what could not be taken is told at the next look', () => {
  writeFileSync(at('a.csv'), '1')
  look(0)
  expect(look(10)).toEqual(['a.csv'])
  files.again([at('a.csv'), at('never-seen.csv')])
  expect([look(11), look(12)]).toEqual([['a.csv'], []])
})
