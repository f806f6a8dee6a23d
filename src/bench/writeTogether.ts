import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync, writeSync } from 'node:fs'
import { dirname } from 'node:path'
import { done, failed, type Outcome } from '../core/terms/index.ts'
import { fileProblem } from './fileProblem.ts'

/** A file as it comes, piece by piece. */
export interface PlannedFile {
  readonly file: string
  readonly pieces: Iterable<Uint8Array>
}

/**
 * Writes files that belong together. Each is written whole beside its name, and none gets its name before all are
 * whole: a stop in between leaves what was there before. Files that exist are refused unless `force`. Folders are made.
 */
export function writeTogether(files: readonly PlannedFile[], force: boolean): Outcome<readonly string[]> {
  if (!force) {
    const there = files.filter(({ file }) => existsSync(file))
    if (there.length > 0) return failed(...there.map(({ file }) => taken(file)))
  }
  const unfinished: string[] = []
  let current = ''
  try {
    for (const { file, pieces } of files) {
      current = file
      mkdirSync(dirname(file), { recursive: true })
      unfinished.push(`${file}.${process.pid}.part`)
      writePieces(unfinished[unfinished.length - 1], pieces)
    }
    for (const [i, { file }] of files.entries()) {
      current = file
      renameSync(unfinished[i], file)
    }
    return done(files.map(({ file }) => file))
  } catch (error) {
    for (const part of unfinished) rmSync(part, { force: true })
    return failed(fileProblem(error, current, 'write'))
  }
}

function writePieces(file: string, pieces: Iterable<Uint8Array>): void {
  const handle = openSync(file, 'wx')
  try {
    for (const piece of pieces) {
      for (let at = 0; at < piece.length; ) at += writeSync(handle, piece, at)
    }
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}

const taken = (file: string) => ({
  kind: 'fileExists',
  class: 'wrongUse' as const,
  place: { file },
  what: 'There is such a file already.',
  mend: 'Choose another name or folder, or add --force to write over it.',
})
