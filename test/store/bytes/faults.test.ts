import { DatabaseSync } from 'node:sqlite'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { change, folderEngine, freshLab, kinds, openedLab, rawBytes, value } from '../engines.ts'

/** What the file layer did, and where it shall fail. */
const disk = vi.hoisted(() => ({
  log: [] as string[],
  fail: undefined as { readonly call: string; readonly code: string; readonly on: RegExp } | undefined,
}))

vi.mock('node:fs', async (original) => {
  const fs = await original<typeof import('node:fs')>()
  const names = new Map<number, string>()
  const step = (call: string, path: string): void => {
    disk.log.push(`${call} ${path}`)
    const { fail } = disk
    if (fail?.call === call && fail.on.test(path))
      throw Object.assign(new Error(`${fail.code}: injected`), { code: fail.code, path })
  }
  return {
    ...fs,
    openSync: (path: string, flags: string) => {
      step('open', path)
      const handle = fs.openSync(path, flags)
      names.set(handle, path)
      return handle
    },
    writeSync: (handle: number, piece: Uint8Array, at: number) => {
      step('write', names.get(handle) ?? '?')
      return fs.writeSync(handle, piece, at)
    },
    fsync: (handle: number, end: (error: Error | null) => void) => {
      fs.fsync(handle, (error) => {
        try {
          step('synced', names.get(handle) ?? '?')
          end(error)
        } catch (injected) {
          end(injected as Error) // step throws nothing else
        }
      })
    },
    renameSync: (from: string, to: string) => {
      step('rename', to)
      fs.renameSync(from, to)
    },
  }
})

beforeEach(() => {
  const { exec } = DatabaseSync.prototype
  vi.spyOn(DatabaseSync.prototype, 'exec').mockImplementation(function (this: DatabaseSync, statement) {
    if (/^(begin|commit|rollback)/.test(statement)) disk.log.push(statement)
    exec.call(this, statement)
  })
})

afterEach(() => {
  vi.restoreAllMocks()
  disk.fail = undefined
})

/** The steps without the parts of names that differ from run to run. */
const steps = (where: string): string[] =>
  disk.log.map((line) =>
    line
      .replace(where, '')
      .replace(/[\w-]+\.part/, 'PART')
      .replace(/\/[0-9a-f]{2}(\/[0-9a-f]{64})?$/, (_, file) => (file ? '/ab/FILE' : '/ab')),
  )

test('bytes are on the disk before they have a name, and have a name before their row is there', async () => {
  const where = await folderEngine.place()
  const lab = await freshLab(where)
  disk.log.length = 0
  value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
  const seen = steps(where)
  const folders = seen.splice(-3, 2).sort() // the disk is waited for at once
  seen.splice(-1, 0, ...folders)
  expect(seen).toEqual([
    'open /raw/incoming/PART',
    'write /raw/incoming/PART',
    'open /raw/incoming/PART',
    'synced /raw/incoming/PART',
    'begin immediate',
    'rename /raw/ab/FILE',
    'open /raw',
    'open /raw/ab',
    'synced /raw',
    'synced /raw/ab',
    'commit',
  ])
})

const failures = [
  { call: 'open', on: /incoming/, code: 'ENOSPC', kind: 'diskFull' },
  { call: 'write', on: /incoming/, code: 'ENOSPC', kind: 'diskFull' },
  { call: 'write', on: /incoming/, code: 'EDQUOT', kind: 'diskFull' },
  { call: 'synced', on: /incoming/, code: 'ENOSPC', kind: 'diskFull' },
  { call: 'synced', on: /incoming/, code: 'EIO', kind: 'systemRefused' },
  { call: 'rename', on: /raw/, code: 'ENOSPC', kind: 'diskFull' },
  { call: 'rename', on: /raw/, code: 'EROFS', kind: 'labReadOnly' },
  { call: 'synced', on: /raw\/[0-9a-f]{2}$/, code: 'EIO', kind: 'systemRefused' },
  { call: 'open', on: /incoming/, code: 'EMFILE', kind: 'systemRefused' },
]

test.for(failures)(
  '$code at "$call" is $kind; nothing is half there and the next try works',
  async ({ kind, call, on, code }) => {
    const where = await folderEngine.place()
    const lab = await freshLab(where)
    const [kept] = value(await lab.records.add([{ bytes: rawBytes(0), name: 'kept.csv' }], change(1)))
    disk.fail = { call, on, code }
    const record = { bytes: rawBytes(1), name: 'one.csv' }
    const failed = await lab.records.add([record], change(2))
    expect(kinds(failed)).toEqual([kind])
    expect(failed.ok ? [] : failed.problems.map((problem) => problem.place.file)).toEqual([
      expect.stringContaining(where),
    ])
    disk.fail = undefined
    expect(value(await lab.records.list())).toEqual([kept.record])
    expect(value(await lab.check())).toMatchObject({ raws: 1, problems: [] })
    expect(value(await lab.records.add([record], change(3)))).toMatchObject([{ isNew: true }])
    await lab.close()
    const again = await openedLab(where)
    expect(value(await again.records.list())).toHaveLength(2)
    expect(value(await again.check())).toMatchObject({ raws: 2, problems: [] })
  },
)
