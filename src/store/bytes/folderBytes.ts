import { closeSync, createReadStream, mkdirSync, openSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { Sha256 } from '../../core/terms/index.ts'
import { refuse } from '../storeProblem.ts'
import type { ByteStore, Bytes, Staged } from './byteStore.ts'
import { syncAll, writeAll } from './durableFile.ts'
import { passPieces } from './pieces.ts'

interface StagedFile extends Staged {
  readonly file: string
}

const checksumName = /^[0-9a-f]{64}$/

/**
 * Bytes as files `ab/abcdef…` of a folder, called after their checksum.
 * They are written to `incoming/….part` and the disk is waited for; settling renames them and waits for the folders. A row
 * that is committed after that never names a file which is not all there. A kill in between leaves one that no row names.
 */
export class FolderBytes implements ByteStore {
  readonly #root: string
  readonly #durable: boolean
  readonly #staged = new Map<Staged, StagedFile>()
  #count = 0

  /** `durable` false for what can be made again: its reader compares checksums, so a torn file is merely absent. */
  constructor(root: string, { durable }: { readonly durable: boolean }) {
    this.#root = root
    this.#durable = durable
  }

  async stage(bytes: Bytes): Promise<Staged> {
    const { file, handle } = this.#openPart()
    try {
      const { sha256, size } = await passPieces(bytes, (piece) => writeAll(handle, piece))
      const staged = { sha256, size, discard: () => this.#discard(staged) }
      this.#staged.set(staged, { ...staged, file })
      return staged
    } catch (error) {
      rmSync(file, { force: true })
      throw error
    } finally {
      closeSync(handle)
    }
  }

  async harden(staged: readonly Staged[]): Promise<void> {
    if (!this.#durable) return
    const files = staged.map((one) => this.#heldOf(one).file)
    await syncAll(files, 'files').catch(refuseTidied)
  }

  async settle(_writing: unknown, staged: readonly Staged[]): Promise<void> {
    const folders = new Set([this.#root]) // always: a folder in it may be new, and its maker may have been killed
    for (const one of staged) {
      const { file } = this.#heldOf(one)
      const folder = join(this.#root, one.sha256.slice(0, 2))
      mkdirSync(folder, { recursive: true })
      rename(file, join(folder, one.sha256))
      this.#staged.delete(one)
      folders.add(folder)
    }
    if (this.#durable) await syncAll([...folders], 'folders')
  }

  async read(sha256: Sha256): Promise<AsyncIterable<Uint8Array> | undefined> {
    const file = this.fileOf(sha256)
    if (statSync(file, { throwIfNoEntry: false }) === undefined) return undefined
    return createReadStream(file, { highWaterMark: 1 << 20 })
  }

  async list(): Promise<Sha256[]> {
    const folders = readdirSync(this.#root).filter((name) => /^[0-9a-f]{2}$/.test(name))
    const names = folders.flatMap((folder) => readdirSync(join(this.#root, folder)))
    return names.filter((name) => checksumName.test(name)).sort()
  }

  async remove(_writing: unknown, sha256s: readonly Sha256[]): Promise<number> {
    let freed = 0
    for (const sha256 of sha256s) {
      freed += statSync(this.fileOf(sha256), { throwIfNoEntry: false })?.size ?? 0
      rmSync(this.fileOf(sha256), { force: true })
    }
    return freed
  }

  async sweep(before: number): Promise<number> {
    const parts = readdirSync(this.#incoming()).map((name) => join(this.#incoming(), name))
    const old = parts.filter((part) => (statSync(part, { throwIfNoEntry: false })?.mtimeMs ?? before) < before)
    for (const part of old) rmSync(part, { force: true })
    return old.length
  }

  /** Where these bytes lie, or would. */
  fileOf(sha256: Sha256): string {
    return join(this.#root, sha256.slice(0, 2), sha256)
  }

  #heldOf(staged: Staged): StagedFile {
    const held = this.#staged.get(staged)
    if (held !== undefined) return held
    throw new RangeError(`the bytes ${staged.sha256} were not staged here, or are settled already`)
  }

  #incoming(): string {
    const folder = join(this.#root, 'incoming')
    mkdirSync(folder, { recursive: true })
    return folder
  }

  /** A file that nobody else writes; a killed process with our number may have left one of the same name. */
  #openPart(): { file: string; handle: number } {
    for (;;) {
      const file = join(this.#incoming(), `${process.pid}-${this.#count++}.part`)
      try {
        return { file, handle: openSync(file, 'wx') }
      } catch (error) {
        if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error
      }
    }
  }

  #discard(staged: Staged): void {
    const held = this.#staged.get(staged)
    if (held === undefined) return
    this.#staged.delete(staged)
    rmSync(held.file, { force: true })
  }
}

function rename(from: string, to: string): void {
  try {
    renameSync(from, to)
  } catch (error) {
    refuseTidied(error)
  }
}

/** A file of ours that is gone was taken for left over; every other error is thrown on. */
function refuseTidied(error: unknown): never {
  if (!(error instanceof Error && 'code' in error && error.code === 'ENOENT')) throw error
  return refuse('changedMeanwhile', {
    place: 'path' in error ? { file: String(error.path) } : {},
    what: 'Somebody tidied the lab while this was on its way in; nothing of it was kept.',
    mend: 'Add it again.',
  })
}
