import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { done, failed, type Outcome } from '../core/terms/index.ts'
import { fileProblem } from './fileProblem.ts'

/** Writes a file so that its name holds all of it or what was there before: beside it, then renamed. Folders are made. */
export function writeWhole(file: string, content: string | Uint8Array): Outcome<string> {
  const unfinished = `${file}.${process.pid}.part`
  let handle: number | undefined
  let begun = false
  try {
    mkdirSync(dirname(file), { recursive: true })
    handle = openSync(unfinished, 'wx')
    begun = true
    writeFileSync(handle, content)
    fsyncSync(handle)
    closeSync(handle)
    handle = undefined
    renameSync(unfinished, file)
    return done(file)
  } catch (error) {
    if (handle !== undefined) closeSync(handle)
    if (begun) rmSync(unfinished, { force: true })
    return failed(fileProblem(error, file, 'write'))
  }
}

/** The same for a file that must not be there yet, unless `force`. */
export function writeNew(file: string, content: string | Uint8Array, force: boolean): Outcome<string> {
  if (force || !existsSync(file)) return writeWhole(file, content)
  return failed({
    kind: 'fileExists',
    class: 'wrongUse',
    place: { file },
    what: 'There is a file of this name already.',
    mend: 'Choose another name, or write over it with --force.',
  })
}
