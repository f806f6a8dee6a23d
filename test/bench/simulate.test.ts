import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { type SimulateArgs, simulate } from '../../src/bench/simulate.ts'
import { writeTogether } from '../../src/bench/writeTogether.ts'
import type { Outside } from '../../src/core/terms/index.ts'
import { inventedLine, readSetup, virtualRunTemplate } from '../../src/io/index.ts'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-simulate-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const seen: [string, number, number][] = []
const outside: Outside = {
  now: () => new Date(0),
  progress: (...step) => seen.push(step),
  stop: { aborted: false },
  program: 'test',
}

const made = (args: Partial<SimulateArgs> = {}) => {
  const outcome = simulate({ folder, force: false, ...args }, outside)
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.value
}

describe('simulate', () => {
  test('writes record, truth and setup, each labelled invented', () => {
    const files = made()
    expect(readdirSync(folder).sort()).toEqual(['virtual-run.csv', 'virtual-run.setup.yaml', 'virtual-run.truth.json'])
    expect(files).toMatchObject({ rows: 1100, steps: 11, seed: 1 })
    const [first, headings] = readFileSync(files.record, 'utf8').split('\n')
    expect(first).toBe(inventedLine)
    expect(headings).toBe('Step,Time,Angular velocity,Torque,Axial force,Gap,Temperature,Angle')
    const truth = JSON.parse(readFileSync(files.truth, 'utf8'))
    expect(truth).toMatchObject({ label: inventedLine, rows: 1100, lever: 0.015, loadFactor: 1, contacts: 3 })
    expect(truth.steps[0]).toEqual({
      number: 1,
      kind: 'slide',
      slidingSpeed: 0.0005,
      friction: expect.closeTo(0.216, 2),
      from: 0,
      to: 100,
    })
    const setup = readSetup(readFileSync(files.setup, 'utf8'), 'setup')
    expect(setup.ok && setup.value.setup.fixture).toMatchObject({ kind: 'ballsOnPlate', trackRadius: 0.015 })
    expect(seen.at(-1)).toEqual(['rows made', 1100, 1100])
  })

  test('the same again is the same, byte for byte; another seed is not', () => {
    const bytes = (name: string, seed?: number) => readFileSync(made({ name, seed }).record)
    expect(bytes('a').equals(bytes('b'))).toBe(true)
    expect(bytes('c').equals(bytes('d', 2))).toBe(false)
  })

  test('as many rows as asked, by longer steps', () => {
    const files = made({ rows: 22_000 })
    expect(files.rows).toBe(22_000)
    expect(readFileSync(files.record, 'utf8').trimEnd().split('\n')).toHaveLength(22_000 + 3)
  })

  test('reads a run file and takes its name', () => {
    const runFile = join(folder, 'lacquer.run.yaml')
    writeFileSync(runFile, virtualRunTemplate.replace('units: row', 'units: none'))
    const files = made({ runFile })
    expect(files.record).toBe(join(folder, 'lacquer.csv'))
    const setup = readSetup(readFileSync(files.setup, 'utf8'), 'setup')
    expect(setup.ok && setup.value.columns.Torque).toEqual({ channel: 'torque', unit: 'N·m' })
  })

  test('a file that is there stays, unless forced', () => {
    writeFileSync(join(folder, 'virtual-run.csv'), 'mine')
    const outcome = simulate({ folder, force: false }, outside)
    expect(outcome.ok ? [] : outcome.problems.map(({ kind }) => kind)).toEqual(['fileExists'])
    expect(readdirSync(folder)).toEqual(['virtual-run.csv'])
    made({ force: true })
    expect(readFileSync(join(folder, 'virtual-run.csv'), 'utf8')).not.toBe('mine')
  })

  test('bad input is a problem: no file, bad YAML, rows that cannot be', () => {
    const kinds = (args: Partial<SimulateArgs>) => {
      const outcome = simulate({ folder, force: false, ...args }, outside)
      return outcome.ok ? [] : outcome.problems.map(({ kind }) => kind)
    }
    expect(kinds({ runFile: join(folder, 'none.yaml') })).toEqual(['fileMissing'])
    writeFileSync(join(folder, 'bad.yaml'), 'seed: one')
    expect(kinds({ runFile: join(folder, 'bad.yaml') })).toContain('quantityUnreadable')
    expect(kinds({ rows: 3 })).toEqual(['rowsImpossible'])
    expect(kinds({ rows: Number.NaN })).toEqual(['rowsImpossible'])
  })
})

describe('files that belong together', () => {
  test('a failure in between leaves nothing behind', () => {
    function* broken(): Generator<Uint8Array> {
      yield Uint8Array.of(1)
      throw Object.assign(new Error('full'), { code: 'ENOSPC' })
    }
    const files = [
      { file: join(folder, 'a'), pieces: [Uint8Array.of(1)] },
      { file: join(folder, 'b'), pieces: broken() },
    ]
    const outcome = writeTogether(files, false)
    expect(outcome.ok ? [] : outcome.problems.map(({ kind }) => kind)).toEqual(['diskFull'])
    expect(readdirSync(folder)).toEqual([])
  })

  test('a mistake of our own is thrown on, and leaves nothing behind either', () => {
    function* wrong(): Generator<Uint8Array> {
      yield Uint8Array.of(1)
      throw new RangeError('ours')
    }
    expect(() => writeTogether([{ file: join(folder, 'a'), pieces: wrong() }], false)).toThrow('ours')
    expect(readdirSync(folder)).toEqual([])
  })

  test('folders are made; a folder in the place of a file is a problem', () => {
    const deep = join(folder, 'x', 'y', 'a')
    expect(writeTogether([{ file: deep, pieces: [Uint8Array.of(7)] }], false).ok).toBe(true)
    expect(existsSync(deep)).toBe(true)
    mkdirSync(join(folder, 'taken'))
    const outcome = writeTogether([{ file: join(folder, 'taken'), pieces: [Uint8Array.of(7)] }], true)
    expect(outcome.ok ? [] : outcome.problems.map(({ kind }) => kind)).toEqual(['fileIsFolder'])
    expect(readdirSync(folder).sort()).toEqual(['taken', 'x'])
  })
})
