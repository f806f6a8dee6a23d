import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { done, failed, type Outcome } from '../../core/terms/index.ts'
import { type KeptRecord, type Lab, StoreTrouble } from '../../store/index.ts'
import { wholeBytes } from './readyFile.ts'

/** The raw bytes of a record for a reader: in memory, or as a temporary file where there are many. */
export interface RawSource {
  readonly source: string | Uint8Array
  dispose(): void
}

/** Refuses when the bytes are not those that were kept. */
export async function rawSource(
  lab: Lab,
  { id, size }: KeptRecord,
  longAbove: number = wholeBytes,
): Promise<Outcome<RawSource>> {
  if (size > longAbove) return temporaryFile(lab, id)
  const bytes = await lab.records.bytes(id)
  return bytes.ok ? done({ source: bytes.value, dispose: () => {} }) : bytes
}

async function temporaryFile(lab: Lab, id: string): Promise<Outcome<RawSource>> {
  const pieces = await lab.records.pieces(id)
  if (!pieces.ok) return pieces
  const folder = mkdtempSync(join(tmpdir(), 'kufe-raw-'))
  const dispose = (): void => rmSync(folder, { recursive: true, force: true })
  const file = join(folder, 'raw')
  const handle = openSync(file, 'wx')
  try {
    for await (const piece of pieces.value) for (let at = 0; at < piece.length; ) at += writeSync(handle, piece, at)
    return done({ source: file, dispose })
  } catch (error) {
    dispose()
    if (error instanceof StoreTrouble) return failed(...error.problems)
    throw error
  } finally {
    closeSync(handle)
  }
}
