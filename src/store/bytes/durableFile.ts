import { closeSync, fsync, fsyncSync, openSync, renameSync, rmSync, writeSync } from 'node:fs'
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

/** Files or folders for which the disk is waited for at once: it then works through them in one go. */
const atOnce = 16

/** Makes the content of files durable, or what folders list. */
export async function syncAll(paths: readonly string[], what: 'files' | 'folders'): Promise<void> {
  if (what === 'folders' && process.platform === 'win32') return
  for (let from = 0; from < paths.length; from += atOnce) {
    const waiting = paths.slice(from, from + atOnce).map((path) => syncOne(path, what === 'files' ? 'r+' : 'r'))
    const ends = await Promise.allSettled(waiting) // nothing may go on behind the back of whoever gives up
    for (const end of ends) if (end.status === 'rejected') throw end.reason
  }
}

async function syncOne(path: string, flags: 'r' | 'r+'): Promise<void> {
  const handle = openSync(path, flags)
  try {
    await new Promise<void>((resolve, reject) => fsync(handle, (error) => (error ? reject(error) : resolve())))
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
