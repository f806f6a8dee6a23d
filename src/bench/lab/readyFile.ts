import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { readFile, stat } from 'node:fs/promises'
import { basename } from 'node:path'
import { done, failed, type Outcome, type Problem, type Sha256 } from '../../core/terms/index.ts'
import { readRecord } from '../../io/index.ts'
import { type Bytes, checksum, type Lab, type RecordFacts, StoreTrouble } from '../../store/index.ts'
import { fileProblem } from '../fileProblem.ts'
import { type Given, readingWith } from '../given.ts'
import type { SetupText } from './setupFiles.ts'

/** A file that is to be kept, with what people say about it. */
export interface FileToKeep {
  readonly file: string
  readonly setup: Outcome<SetupText>
  readonly facts: Partial<RecordFacts>
}

/** A file that was looked at and may be kept. */
export interface ReadyFile {
  readonly file: string
  readonly bytes: Bytes
  readonly size: number
  /** Undefined for bytes that the lab has already. */
  readonly setupText: string | undefined
  readonly facts: Partial<RecordFacts>
}

/** Longer files are kept piece by piece and never lie in memory as a whole. */
export const wholeBytes = 1 << 26

/** Reads a file as far as is needed to know that it is a record; bytes that the lab has already need no second look. */
export async function readyFile(
  { file, setup, facts }: FileToKeep,
  { lab, given, longAbove = wholeBytes }: { readonly lab: Lab; readonly given: Given; readonly longAbove?: number },
): Promise<Outcome<ReadyFile>> {
  let whole: Uint8Array | undefined
  let size: number
  try {
    size = (await stat(file)).size
    if (size <= longAbove) whole = plain(await readFile(file))
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
  if (whole !== undefined && (await lab.records.get(checksum(whole))).ok)
    return done({ file, bytes: whole, size, setupText: undefined, facts })
  if (!setup.ok) return setup
  const { text: setupText, sha256, columns } = setup.value
  const record = await readRecord(whole ?? file, { ...readingWith(given.reading, columns), file: basename(file) })
  if (!record.ok) return record
  record.value.close()
  const bytes = whole ?? piecesOf(file, record.value.sha256)
  return done({ file, bytes, size, setupText, facts: { ...facts, setup: sha256 } })
}

/** A Buffer's methods differ from those of its kind. */
const plain = ({ buffer, byteOffset, byteLength }: Buffer): Uint8Array => new Uint8Array(buffer, byteOffset, byteLength)

/** The file again, piece by piece; it ends with a problem when it is no longer what it was. */
async function* piecesOf(file: string, sha256: Sha256): AsyncGenerator<Uint8Array> {
  const hash = createHash('sha256')
  for await (const piece of createReadStream(file, { highWaterMark: 1 << 20 })) {
    hash.update(piece)
    yield piece
  }
  if (hash.digest('hex') !== sha256) throw new StoreTrouble(changing(file))
}

const changing = (file: string): Problem => ({
  kind: 'fileChanging',
  class: 'badInput',
  place: { file },
  what: 'The file was written to while it was read.',
  mend: 'Add it again when nobody writes to it any more.',
})
