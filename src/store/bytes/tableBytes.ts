import { closeSync, mkdtempSync, openSync, readSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Sha256 } from '../../core/terms/index.ts'
import type { Reading, Writing } from '../schema/tables.ts'
import type { ByteStore, Bytes, Staged } from './byteStore.ts'
import { writeAll } from './durableFile.ts'
import { passPieces } from './pieces.ts'

/** Bytes in one row: small enough to be handed around, large enough that rows do not matter. */
const partBytes = 1 << 22

interface Held {
  readonly parts: () => Iterable<Uint8Array>
  readonly forget: () => void
}

/** Bytes as rows of a database, in parts, in the same transaction as the rows that name them. */
export class TableBytes implements ByteStore {
  readonly #read: Reading
  readonly #table: 'raw_parts' | 'column_parts'
  readonly #held = new Map<Staged, Held>()

  constructor(read: Reading, table: 'raw_parts' | 'column_parts') {
    this.#read = read
    this.#table = table
  }

  async stage(bytes: Bytes): Promise<Staged> {
    const held = bytes instanceof Uint8Array ? inMemory(bytes) : spool()
    try {
      const facts = await passPieces(bytes, held.take)
      const staged = { ...facts, discard: () => this.#discard(staged) }
      this.#held.set(staged, held)
      return staged
    } catch (error) {
      held.forget()
      throw error
    }
  }

  async harden(): Promise<void> {} // the commit does

  async settle(writing: Writing, staged: readonly Staged[]): Promise<void> {
    for (const one of staged) {
      const held = this.#held.get(one)
      if (held === undefined)
        throw new RangeError(`the bytes ${one.sha256} were not staged here, or are settled already`)
      const { sha256 } = one
      const there = await writing.selectFrom(this.#table).select('part').where('sha256', '=', sha256).executeTakeFirst()
      let part = 0
      if (there === undefined) {
        for (const bytes of held.parts()) {
          await writing.insertInto(this.#table).values({ sha256, part, bytes }).execute()
          part++
        }
      }
      one.discard()
    }
  }

  async read(sha256: Sha256): Promise<AsyncIterable<Uint8Array> | undefined> {
    const first = await this.#part(sha256, 0)
    if (first === undefined) return undefined
    const part = (number: number) => this.#part(sha256, number)
    return (async function* () {
      let number = 0
      for (let bytes: Uint8Array | undefined = first; bytes !== undefined; bytes = await part(++number)) yield bytes
    })()
  }

  async list(reading: Reading): Promise<Sha256[]> {
    const rows = await reading
      .selectFrom(this.#table)
      .select('sha256')
      .where('part', '=', 0)
      .orderBy('sha256')
      .execute()
    return rows.map(({ sha256 }) => sha256)
  }

  async remove(writing: Writing, sha256s: readonly Sha256[]): Promise<number> {
    let freed = 0
    for (const sha256 of sha256s) {
      const gone = await writing.deleteFrom(this.#table).where('sha256', '=', sha256).returning('bytes').execute()
      for (const { bytes } of gone) freed += bytes.length
    }
    return freed
  }

  async sweep(): Promise<number> {
    return 0 // what a killed process staged lies in its own temporary folder
  }

  async #part(sha256: Sha256, part: number): Promise<Uint8Array | undefined> {
    const query = this.#read.selectFrom(this.#table).select('bytes')
    const row = await query.where('sha256', '=', sha256).where('part', '=', part).executeTakeFirst()
    return row?.bytes
  }

  #discard(staged: Staged): void {
    this.#held.get(staged)?.forget()
    this.#held.delete(staged)
  }
}

type Taking = Held & { readonly take: (piece: Uint8Array) => void }

/** Parts of bytes that the caller holds anyway; no bytes at all are one empty part, so that they can be found again. */
function inMemory(bytes: Uint8Array): Taking {
  return {
    take: () => {},
    forget: () => {},
    *parts() {
      for (let at = 0; at < Math.max(bytes.length, 1); at += partBytes) yield bytes.subarray(at, at + partBytes)
    },
  }
}

/** Parts of bytes that come piece by piece: their checksum is known only at the end, so a temporary file waits for it. */
function spool(): Taking {
  const folder = mkdtempSync(join(tmpdir(), 'kufe-bytes-'))
  const handle = openSync(join(folder, 'bytes'), 'wx+')
  return {
    take: (piece) => writeAll(handle, piece),
    forget: () => {
      closeSync(handle)
      rmSync(folder, { recursive: true, force: true })
    },
    *parts() {
      for (let at = 0; ; ) {
        const part = new Uint8Array(partBytes)
        let end = 0
        for (let got = 1; got > 0 && end < partBytes; end += got)
          got = readSync(handle, part, end, partBytes - end, at + end)
        if (end > 0 || at === 0) yield part.subarray(0, end)
        if (end < partBytes) return
        at += end
      }
    },
  }
}
