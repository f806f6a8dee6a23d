import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import type { DatabaseSync } from 'node:sqlite'
import { Kysely } from 'kysely'
import { syncAll, syncFolder } from '../bytes/durableFile.ts'
import { FolderBytes } from '../bytes/folderBytes.ts'
import type { Engine } from '../engine.ts'
import type { Reading, Tables, Writing } from '../schema/tables.ts'
import { refuse } from '../storeProblem.ts'
import { openConnection } from './connection.ts'
import { checkFolder, type LabFolder, labFolder, layFolder, mayWrite } from './labFolder.ts'
import { nodeSqliteDialect } from './nodeSqliteDialect.ts'

/** A lab in a folder of its own: SQLite for the rows, files for the bytes. */
export class FolderEngine implements Engine {
  readonly kind = 'sqlite'
  readonly where: string
  readonly place: { readonly file: string }
  readonly readOnly: boolean
  readonly read: Reading
  readonly raw: FolderBytes
  readonly columns: FolderBytes
  readonly #lab: LabFolder
  readonly #writer: Kysely<Tables> | undefined
  readonly #mode: 'read' | 'immutable'
  readonly #reader: DatabaseSync
  readonly #writing: DatabaseSync | undefined

  constructor(lab: LabFolder, patience: number) {
    this.#lab = lab
    this.where = lab.folder
    this.place = { file: lab.folder }
    this.readOnly = !mayWrite(lab)
    this.#mode = this.readOnly && !existsSync(`${lab.database}-wal`) ? 'immutable' : 'read'
    // The writer comes first: it brings back what a killed process had committed.
    this.#writing = this.readOnly ? undefined : openWriter(lab.database)
    this.#writer = this.#writing && kyselyOn(this.#writing, { begin: 'begin immediate', patience })
    this.#reader = openConnection(lab.database, this.#mode)
    this.read = kyselyOn(this.#reader, { begin: 'begin', patience: 0 })
    this.raw = new FolderBytes(lab.raw, { durable: true })
    this.columns = new FolderBytes(lab.columns, { durable: false })
  }

  async write<T>(act: (writing: Writing) => Promise<T>): Promise<T> {
    if (this.#writer === undefined) {
      return refuse('labReadOnly', {
        place: this.place,
        what: 'This lab may only be read here.',
        mend: 'Get the right to write to its folder, or copy it to a folder of your own with a backup.',
      })
    }
    return this.#writer.transaction().execute(act)
  }

  async snapshot<T>(act: (reading: Writing) => Promise<T>): Promise<T> {
    // A connection of its own: a transaction held open would make others wait for it.
    const reader = openConnection(this.#lab.database, this.#mode)
    try {
      return await kyselyOn(reader, { begin: 'begin', patience: 0 }).transaction().execute(act)
    } finally {
      reader.close()
    }
  }

  get unfinished(): boolean {
    return existsSync(this.#lab.marker)
  }

  finish(): void {
    const { folder, marker } = this.#lab
    for (const name of readdirSync(folder))
      if (/^lab\.json\.\d+\.part$/.test(name)) rmSync(join(folder, name), { force: true })
    rmSync(marker, { force: true })
    syncFolder(folder)
  }

  /** Copies the database as it stands to `backups/`; the bytes beside it never change, so the copy is whole with them. */
  async copyBefore(version: number): Promise<void> {
    mkdirSync(this.#lab.backups, { recursive: true })
    const copy = join(this.#lab.backups, `before-version-${version}.sqlite`)
    const part = `${copy}.part`
    rmSync(part, { force: true }) // of a process that was killed; we hold the lock now
    const reader = openConnection(this.#lab.database, 'read')
    try {
      reader.prepare('vacuum into ?').run(part)
    } finally {
      reader.close()
    }
    await syncAll([part], 'files')
    renameSync(part, copy)
    syncFolder(this.#lab.backups)
  }

  /** The writer last: whoever closes last folds the log into the database. */
  async close(): Promise<void> {
    await this.read.destroy()
    await this.#writer?.destroy()
    for (const database of [this.#reader, this.#writing]) if (database?.isOpen) database.close()
  }
}

const kyselyOn = (database: DatabaseSync, options: Parameters<typeof nodeSqliteDialect>[1]): Kysely<Tables> =>
  new Kysely<Tables>({ dialect: nodeSqliteDialect(database, options) })

/** The log before the database lets readers go on while one writes. The setting stays with the file. */
function openWriter(file: string): DatabaseSync {
  const database = openConnection(file, 'write')
  try {
    database.exec('pragma journal_mode = wal')
    return database
  } catch (error) {
    database.close()
    throw error
  }
}

/** A folder that is a lab already. */
export function openFolder(path: string, patience: number): FolderEngine {
  const lab = labFolder(path)
  checkFolder(lab)
  return new FolderEngine(lab, patience)
}

/** A folder that is to become one; its database is still without a schema. */
export function newFolder(path: string, patience: number): FolderEngine {
  const lab = labFolder(path)
  layFolder(lab)
  return new FolderEngine(lab, patience)
}
