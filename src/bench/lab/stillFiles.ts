import { statSync } from 'node:fs'
import { recordFiles } from './recordFiles.ts'
import { setupBeside } from './setupFiles.ts'

/** What is known of a file that lies in the folder. */
interface Seen {
  /** Size and time of the record and of its setup: while these stay, so does what becomes of it. */
  readonly state: string
  /** When it was first seen in this state, ms. */
  readonly since: number
  /** Taken in this state; need not be taken again. */
  readonly taken: boolean
}

/** Records of a folder that somebody may still be writing: tells those that have stopped growing, each state once. */
export class StillFiles {
  readonly #folder: string
  readonly #setup: string | undefined
  #seen: ReadonlyMap<string, Seen> = new Map()

  constructor(folder: string, setup: string | undefined) {
    this.#folder = folder
    this.#setup = setup
  }

  /** Looks into the folder at the time `now` (ms) and gives the files that have been the same for `patience` ms and are not empty. */
  look(now: number, patience: number): string[] {
    const seen = new Map<string, Seen>()
    const still: string[] = []
    for (const file of recordFiles([this.#folder]).files) {
      const state = this.#stateOf(file)
      if (state === undefined) continue
      const known = this.#seen.get(file)
      const same = known?.state === state ? known : { state, since: now, taken: false }
      const take = !same.taken && now - same.since >= patience
      if (take) still.push(file)
      seen.set(file, take ? { ...same, taken: true } : same)
    }
    this.#seen = seen
    return still
  }

  /** Has these files taken again at the next look. */
  again(files: readonly string[]): void {
    const seen = new Map(this.#seen)
    for (const file of files) {
      const known = seen.get(file)
      if (known !== undefined) seen.set(file, { ...known, taken: false })
    }
    this.#seen = seen
  }

  #stateOf(file: string): string | undefined {
    const record = statSync(file, { throwIfNoEntry: false })
    if (record === undefined || record.size === 0) return undefined
    const beside = this.#setup ?? setupBeside(file)
    const setup = beside === undefined ? undefined : statSync(beside, { throwIfNoEntry: false })
    return [record.size, record.mtimeMs, setup?.size, setup?.mtimeMs].join(' ')
  }
}
