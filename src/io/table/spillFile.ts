import { randomBytes } from 'node:crypto'
import { closeSync, openSync, readSync, unlinkSync, writeSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const leftBehind = new FinalizationRegistry<number>((descriptor) => closeSync(descriptor))

/**
 * A nameless file for numbers that do not fit into memory: made in the folder for temporary files and unlinked at
 * once, so that it vanishes with the process whatever happens. Closed by `close`, or when nobody holds it any more.
 */
export class SpillFile {
  readonly #descriptor: number
  #open = true

  constructor() {
    const path = join(tmpdir(), `kufe-${randomBytes(12).toString('hex')}`)
    this.#descriptor = openSync(path, 'wx+', 0o600)
    unlinkSync(path)
    leftBehind.register(this, this.#descriptor, this)
  }

  /** Writes the numbers so that the first has the position `at`, counted in numbers. */
  write(at: number, numbers: Float64Array): void {
    const bytes = new Uint8Array(numbers.buffer, numbers.byteOffset, numbers.byteLength)
    for (let done = 0; done < bytes.length; ) {
      done += writeSync(this.#descriptor, bytes, done, bytes.length - done, at * 8 + done)
    }
  }

  /** Fills `numbers` with those that begin at the position `at`. */
  read(at: number, numbers: Float64Array): void {
    const bytes = new Uint8Array(numbers.buffer, numbers.byteOffset, numbers.byteLength)
    for (let done = 0; done < bytes.length; ) {
      const got = readSync(this.#descriptor, bytes, done, bytes.length - done, at * 8 + done)
      if (got === 0) throw new RangeError(`the spill file ends before position ${at + done / 8}`)
      done += got
    }
  }

  close(): void {
    if (!this.#open) return
    this.#open = false
    leftBehind.unregister(this)
    closeSync(this.#descriptor)
  }
}
