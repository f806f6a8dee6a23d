import { mkdirSync, readdirSync, utimesSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, onTestFinished, test } from 'vitest'
import type { ByteStore } from '../../../src/store/bytes/byteStore.ts'
import { FolderBytes } from '../../../src/store/bytes/folderBytes.ts'
import { joinPieces } from '../../../src/store/bytes/pieces.ts'
import type { Engine } from '../../../src/store/engine.ts'
import { checksum } from '../../../src/store/index.ts'
import { openEngine } from '../../../src/store/opening.ts'
import { engines, freshLab, rawBytes, temporaryFolder } from '../engines.ts'

const allBytes = async (store: ByteStore, sha256: string): Promise<Uint8Array | undefined> => {
  const pieces = await store.read(sha256)
  return pieces && joinPieces(pieces)
}

describe.each(engines)('bytes on $name', ({ place }) => {
  /** The bytes of columns: those of records cannot be removed from a database. */
  const opened = async (): Promise<{ engine: Engine; store: ByteStore }> => {
    const where = await place()
    await freshLab(where)
    const engine = openEngine(where)
    onTestFinished(() => engine.close())
    return { engine, store: engine.columns }
  }

  test('are seen once they are settled', async () => {
    const { engine, store } = await opened()
    const staged = await store.stage(rawBytes(1))
    expect({ ...staged, discard: 0 }).toEqual({ sha256: checksum(rawBytes(1)), size: 200, discard: 0 })
    expect(await store.list(engine.read)).toEqual([])
    expect(await store.read(staged.sha256)).toBeUndefined()
    await engine.write((writing) => store.settle(writing, [staged]))
    expect(await store.list(engine.read)).toEqual([staged.sha256])
    expect(await allBytes(store, staged.sha256)).toEqual(rawBytes(1))
  })

  test.for([
    ['an array', () => rawBytes(7, 9_000_000)],
    ['pieces', () => [rawBytes(7, 9_000_000).subarray(0, 5_000_000), rawBytes(7, 9_000_000).subarray(5_000_000)]],
    ['nothing', () => new Uint8Array(0)],
    ['no pieces', () => []],
  ] as const)('come back as they were: %s', async ([, make]) => {
    const { engine, store } = await opened()
    const staged = await store.stage(make())
    await engine.write((writing) => store.settle(writing, [staged]))
    const made = make()
    const whole = made instanceof Uint8Array ? made : Buffer.concat(made)
    expect([staged.size, staged.sha256]).toEqual([whole.length, checksum(whole)])
    expect(Buffer.compare((await allBytes(store, staged.sha256)) ?? new Uint8Array(1), whole)).toBe(0)
  })

  test('that are there already stay', async () => {
    const { engine, store } = await opened()
    for (let time = 0; time < 2; time++) {
      const twice = [await store.stage(rawBytes(1)), await store.stage([rawBytes(1)])]
      await engine.write((writing) => store.settle(writing, twice))
    }
    expect(await store.list(engine.read)).toEqual([checksum(rawBytes(1))])
    expect(await allBytes(store, checksum(rawBytes(1)))).toEqual(rawBytes(1))
  })

  test('are forgotten when nobody settles them, and settled once', async () => {
    const { engine, store } = await opened()
    const [first, second] = [await store.stage(rawBytes(1)), await store.stage([rawBytes(2)])]
    first.discard()
    await expect(engine.write((writing) => store.settle(writing, [first]))).rejects.toThrow(RangeError)
    await engine.write((writing) => store.settle(writing, [second]))
    await expect(engine.write((writing) => store.settle(writing, [second]))).rejects.toThrow(RangeError)
    second.discard()
    expect(await store.list(engine.read)).toEqual([second.sha256])
  })

  test('leave nothing when their source breaks off', async () => {
    const { engine, store } = await opened()
    async function* broken(): AsyncGenerator<Uint8Array> {
      yield rawBytes(1)
      throw new Error('the cable was pulled')
    }
    await expect(store.stage(broken())).rejects.toThrow('the cable was pulled')
    expect(await store.list(engine.read)).toEqual([])
    expect(await store.sweep(Number.POSITIVE_INFINITY)).toBe(0)
  })

  test('go when they are removed', async () => {
    const { engine, store } = await opened()
    const staged = [await store.stage(rawBytes(1)), await store.stage(rawBytes(2, 50))]
    await engine.write((writing) => store.settle(writing, staged))
    const gone = [staged[0].sha256, checksum('never there')]
    expect(await engine.write((writing) => store.remove(writing, gone))).toBe(200)
    expect(await store.list(engine.read)).toEqual([staged[1].sha256])
  })
})

describe('bytes in a folder', () => {
  test('lie under the first two digits of their checksum', async () => {
    const root = temporaryFolder()
    const store = new FolderBytes(root, { durable: true })
    const staged = await store.stage(rawBytes(1))
    await store.settle(undefined, [staged])
    expect(store.fileOf(staged.sha256)).toBe(join(root, staged.sha256.slice(0, 2), staged.sha256))
    expect(readdirSync(join(root, staged.sha256.slice(0, 2)))).toEqual([staged.sha256])
  })

  test('that a killed process was writing are swept away by age, and never listed', async () => {
    const root = temporaryFolder()
    const store = new FolderBytes(root, { durable: true })
    mkdirSync(join(root, 'incoming'))
    for (const [name, second] of [
      ['1-0.part', 10],
      ['1-1.part', 30],
    ] as const) {
      writeFileSync(join(root, 'incoming', name), 'half')
      utimesSync(join(root, 'incoming', name), second, second)
    }
    const other = `${process.pid}-0.part`
    writeFileSync(join(root, 'incoming', other), 'of a process that had our number')
    expect(await store.list()).toEqual([])
    expect(await store.sweep(20_000)).toBe(1)
    const staged = await store.stage(rawBytes(1))
    await store.settle(undefined, [staged])
    expect(readdirSync(join(root, 'incoming')).sort()).toEqual(['1-1.part', other].sort())
    expect(await store.list()).toEqual([staged.sha256])
  })

  test('that were swept away too early are refused with a mend', async () => {
    const store = new FolderBytes(temporaryFolder(), { durable: true })
    const staged = await store.stage(rawBytes(1))
    expect(await store.sweep(Number.POSITIVE_INFINITY)).toBe(1)
    await expect(store.settle(undefined, [staged])).rejects.toThrow('Somebody tidied the lab')
  })
})
