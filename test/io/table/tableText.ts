import { expect } from 'vitest'
import type { Outcome, Problem } from '../../../src/core/terms/index.ts'
import { type RawRecord, type ReadOptions, readRecord } from '../../../src/io/index.ts'

/** Reads a text (or bytes) that stands for the file `run.csv`. */
export function readText(text: string | Uint8Array, options: ReadOptions = {}): Promise<Outcome<RawRecord>> {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text
  return readRecord(bytes, { file: 'run.csv', ...options })
}

/** The record of a text that must be read. */
export async function recordOf(text: string | Uint8Array, options: ReadOptions = {}): Promise<RawRecord> {
  const outcome = await readText(text, options)
  expect(outcome.ok ? [] : outcome.problems).toEqual([])
  if (!outcome.ok) throw new Error('unreachable')
  return outcome.value
}

/** The problems of a text that must be refused. */
export async function problemsOf(text: string | Uint8Array, options: ReadOptions = {}): Promise<readonly Problem[]> {
  const outcome = await readText(text, options)
  expect(outcome.ok, 'the text should have been refused').toBe(false)
  return outcome.ok ? [] : outcome.problems
}

/** All values of a record by channel, rounded to 12 digits so that units do not show in the last bits. */
export function valuesOf({ channels, rows }: RawRecord): Record<string, number[]> {
  return Object.fromEntries(
    channels.names.map((name) => [name, Array.from(channels.read(name, 0, rows), (x) => Number(x.toPrecision(12)))]),
  )
}

/** A table of `rows` rows: step, time in s, torque in N·m. */
export function longTable(rows: number, line: (row: number) => string): string {
  const lines = ['Step,Time,Torque', ',s,N·m']
  for (let row = 0; row < rows; row++) lines.push(line(row))
  return `${lines.join('\n')}\n`
}
