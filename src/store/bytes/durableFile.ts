import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeSync } from 'node:fs'
import { dirname } from 'node:path'

/** Makes what a folder lists durable: names that came, went or changed. Windows writes them through and opens no folder. */
export function syncFolder(folder: string): void {
  if (process.platform === 'win32') return
  const handle = openSync(folder, 'r')
  try {
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}

/** Writes all of a piece; the system may take it in parts. */
export function writeAll(handle: number, piece: Uint8Array): void {
  for (let at = 0; at < piece.length; ) at += writeSync(handle, piece, at)
}

/** Writes a file so that its name holds all of it or what was there before, also after a loss of power. */
export function writeDurably(file: string, content: string): void {
  const unfinished = `${file}.${process.pid}.part`
  const handle = openSync(unfinished, 'w')
  try {
    writeAll(handle, Buffer.from(content))
    fsyncSync(handle)
  } catch (error) {
    rmSync(unfinished, { force: true })
    throw error
  } finally {
    closeSync(handle)
  }
  renameSync(unfinished, file)
  syncFolder(dirname(file))
}
