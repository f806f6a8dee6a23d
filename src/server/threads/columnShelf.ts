import type { HeldColumns } from '../../bench/serve/index.ts'
import type { Outcome } from '../../core/terms/index.ts'
import type { TaskPool } from './taskPool.ts'

/** Bytes of columns that are remembered: some records of ten million rows, or hundreds of common ones. */
const mostBytes = 1.5e9

/** Columns of the records that somebody looks at, each read once; the one that was not looked at for longest goes first. */
export class ColumnShelf {
  readonly #pool: TaskPool
  readonly #held = new Map<string, Promise<Outcome<HeldColumns>>>()

  constructor(pool: TaskPool) {
    this.#pool = pool
  }

  /** @param result id of the result that says how the table is read; another one is another set of columns */
  async get(record: string, result: string): Promise<Outcome<HeldColumns>> {
    const key = `${record} ${result}`
    const known = this.#held.get(key) ?? this.#pool.quickly('columns', { record })
    this.#held.delete(key)
    this.#held.set(key, known) // at the end: looked at last
    const columns = await known.catch((error: unknown) => {
      this.#held.delete(key)
      throw error
    })
    if (!columns.ok) this.#held.delete(key)
    await this.#makeRoom()
    return columns
  }

  async #makeRoom(): Promise<void> {
    let bytes = 0
    for (const [key, held] of [...this.#held].reverse()) {
      const columns = await held.catch(() => undefined)
      if (columns?.ok !== true) continue
      if (bytes > 0 && bytes + columns.value.bytes > mostBytes) this.#held.delete(key)
      else bytes += columns.value.bytes
    }
  }
}
