import { createHash, randomBytes } from 'node:crypto'
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { done, failed, type Outcome, type Problem } from '../../../core/terms/index.ts'
import type { Lab } from '../../../store/index.ts'
import { fileProblem } from '../../fileProblem.ts'
import { writeWhole } from '../../writeWhole.ts'
import type { KeepWords } from './keepUpload.ts'

/** A file that came whole and waits to be kept. */
export interface Upload {
  readonly id: string
  /** As it was called where it came from: a text, never a path. */
  readonly name: string
  readonly study: string | null
  readonly size: number
  /** Instant at which it had come, UTC. */
  readonly at: string
  /** What was said when somebody began to keep it; it is gone on with after a stop. */
  readonly keeping: KeepWords | null
}

/** Largest file that is taken, bytes. */
const largestUpload = 2 * 2 ** 30

/** Most that all waiting ones may take. */
const largestArea = 16 * 2 ** 30

/** Uploads that nobody kept are thrown away after so long, ms. */
const longestWait = 3 * 24 * 3600 * 1000

/**
 * Where files lie between coming and being kept: `uploads/` in a lab's folder, or a folder for temporary files beside a
 * database. Files are called after random ids, never after what people call them. The note beside a file is written when all
 * of it is on the disk, so what has a note is whole; what has none is cleared away.
 */
export class UploadArea {
  readonly #folder: string

  /** Largest file that is taken, bytes. */
  readonly largest: number

  constructor(lab: Pick<Lab, 'where' | 'engine'>, largest: number = largestUpload) {
    this.largest = largest
    const beside = `kufe-uploads-${createHash('sha256').update(lab.where).digest('hex').slice(0, 16)}`
    this.#folder = lab.engine === 'sqlite' ? join(lab.where, 'uploads') : join(tmpdir(), beside)
  }

  /** Takes a file piece by piece; nothing of it is there unless all of it came. */
  async receive(
    { name, study, at }: Pick<Upload, 'name' | 'study' | 'at'>,
    pieces: AsyncIterable<Uint8Array>,
  ): Promise<Outcome<Upload>> {
    const id = randomBytes(16).toString('hex')
    const part = join(this.#folder, `${id}.${process.pid}.part`)
    try {
      mkdirSync(this.#folder, { recursive: true, mode: 0o700 })
      const size = await writePieces(part, pieces, Math.min(this.largest, largestArea - this.#size()))
      if (size === undefined) return failed(tooLarge(name, this.largest))
      renameSync(part, this.file(id))
      const upload: Upload = { id, name, study, size, at, keeping: null }
      const noted = this.#note(upload)
      return noted.ok ? done(upload) : noted
    } catch (error) {
      return failed(fileProblem(error, name, 'write'))
    } finally {
      rmSync(part, { force: true })
    }
  }

  /** Path of the bytes of an upload. */
  file(id: string): string {
    return join(this.#folder, `${id}.raw`)
  }

  get(id: string): Outcome<Upload> {
    const found = this.list().find((upload) => upload.id === id)
    return found === undefined ? failed(gone(id)) : done(found)
  }

  /** All that wait, the oldest first. */
  list(): readonly Upload[] {
    return this.#names()
      .filter((name) => name.endsWith('.json'))
      .flatMap((name) => readNote(join(this.#folder, name)))
      .sort((a, b) => (a.at < b.at ? -1 : 1))
  }

  /** Remembers what was said about an upload that is being kept; null when it is not kept any more. */
  mark(id: string, keeping: KeepWords | null): Outcome<null> {
    const upload = this.get(id)
    if (!upload.ok) return upload
    const noted = this.#note({ ...upload.value, keeping })
    return noted.ok ? done(null) : noted
  }

  drop(id: string): void {
    // The note first: what has none is cleared away at the next start.
    rmSync(join(this.#folder, `${id}.json`), { force: true })
    rmSync(this.file(id), { force: true })
  }

  /** Clears away what killed processes left and what nobody kept for days. */
  tidy(now: Date): void {
    const known = new Set(this.list().map(({ id }) => id))
    for (const name of this.#names()) {
      const [id, owner] = name.split('.')
      const part = name.endsWith('.part')
      if (part ? !isAlive(Number(owner)) : !known.has(id)) rmSync(join(this.#folder, name), { force: true })
    }
    for (const { id, at, keeping } of this.list()) {
      if (keeping === null && now.getTime() - Date.parse(at) > longestWait) this.drop(id)
    }
  }

  /** Takes the folder away where nothing waits in it. */
  leave(): void {
    if (existsSync(this.#folder) && this.#names().length === 0) rmSync(this.#folder, { recursive: true, force: true })
  }

  #note(upload: Upload): Outcome<string> {
    return writeWhole(join(this.#folder, `${upload.id}.json`), JSON.stringify(upload))
  }

  #names(): readonly string[] {
    return existsSync(this.#folder) ? readdirSync(this.#folder) : []
  }

  #size(): number {
    return this.#names().reduce(
      (sum, name) => sum + (statSync(join(this.#folder, name), { throwIfNoEntry: false })?.size ?? 0),
      0,
    )
  }
}

/** Writes pieces and waits for the disk; gives the size, or undefined where more came than may. */
async function writePieces(file: string, pieces: AsyncIterable<Uint8Array>, most: number): Promise<number | undefined> {
  const handle = openSync(file, 'wx', 0o600)
  try {
    let size = 0
    for await (const piece of pieces) {
      size += piece.length
      if (size > most) return undefined
      for (let at = 0; at < piece.length; ) at += writeSync(handle, piece, at)
    }
    fsyncSync(handle)
    return size
  } finally {
    closeSync(handle)
  }
}

/** A note of ours; none where it is not there any more or torn. */
function readNote(file: string): readonly Upload[] {
  try {
    const note = JSON.parse(readFileSync(file, 'utf8'))
    return existsSync(file.replace(/\.json$/, '.raw')) ? [note] : []
  } catch {
    return []
  }
}

function isAlive(process_: number): boolean {
  try {
    process.kill(process_, 0)
    return true
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM'
  }
}

const tooLarge = (name: string, largest: number): Problem => ({
  kind: 'bodyTooLarge',
  class: 'wrongUse',
  place: { file: name },
  what: `The file is larger than ${Math.round(largest / 2 ** 20)} MiB, or too much waits to be kept.`,
  mend: 'Add it with "kufe add", or keep or drop what waits.',
})

const gone = (id: string): Problem => ({
  kind: 'notThere',
  class: 'wrongUse',
  place: { name: 'upload', cell: id },
  what: 'This upload is not here any more: it was kept, or nobody kept it for days.',
  mend: 'Look for the record, or hand in the file again.',
})
