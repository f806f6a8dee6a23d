import { mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, unlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import {
  dataPackageFiles,
  folderSource,
  type PackagedLab,
  packageProblemKinds,
  readDataPackage,
  writePackageFolder,
  zipPackage,
  zipSource,
} from '../../../src/io/dataPackage/index.ts'
import { pack } from '../../../src/io/table/zipArchive.ts'
import { gathered, inventedContent, inventedLab, rawTexts, sha256, sourceOf, textOf } from './inventedLab.ts'

const files = await gathered(dataPackageFiles(inventedContent()))
let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-package-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** A lab with its bytes and texts in it, to be compared. */
const whole = async ({ records, results, ...rest }: PackagedLab) => ({
  ...rest,
  records: await Promise.all(records.map(async ({ bytes, ...record }) => ({ ...record, bytes: [...(await bytes())] }))),
  results: await Promise.all(results.map(async ({ text, ...result }) => ({ ...result, text: await text() }))),
})

async function read(map: ReadonlyMap<string, Uint8Array>) {
  return readDataPackage(sourceOf(map))
}
const problemsOf = async (map: ReadonlyMap<string, Uint8Array>) => {
  const outcome = await read(map)
  return outcome.ok ? [] : outcome.problems.map(({ kind, place }) => `${kind} ${place.file ?? ''}`)
}
const changed = (path: string, content: string | undefined) => {
  const copy = new Map(files)
  if (content === undefined) copy.delete(path)
  else copy.set(path, new TextEncoder().encode(content))
  return copy
}
const pathLike = (pattern: RegExp): string => [...files.keys()].find((path) => pattern.test(path)) ?? ''

describe('gives back the same lab', () => {
  test('from memory', async () => {
    const outcome = await read(files)
    expect(outcome.ok && (await whole(outcome.value))).toEqual(await whole(inventedLab()))
  })

  test('from a folder', async () => {
    const there = join(folder, 'lab')
    const written = await writePackageFolder(dataPackageFiles(inventedContent()), there)
    expect(written).toMatchObject({ ok: true, value: { files: files.size } })
    const source = await folderSource(there)
    const outcome = source.ok ? await readDataPackage(source.value) : source
    expect(outcome.ok && (await whole(outcome.value))).toEqual(await whole(inventedLab()))
  })

  test('from a zip, and from one with a folder round all of it', async () => {
    const bytes = await zipPackage(dataPackageFiles(inventedContent()))
    const wrapped = pack(new Map([...files].map(([path, content]) => [`oat drinks/${path}`, content])))
    for (const zip of [bytes, wrapped]) {
      const source = zipSource(zip, 'lab.zip')
      const outcome = source.ok ? await readDataPackage(source.value) : source
      expect(outcome.ok && (await whole(outcome.value))).toEqual(await whole(inventedLab()))
    }
  })

  test('and out of it the same package again', async () => {
    const outcome = await read(files)
    if (!outcome.ok) throw new Error('not read')
    const again = await gathered(dataPackageFiles(inventedContent({ lab: outcome.value })))
    for (const [path, bytes] of files) expect(Buffer.compare(again.get(path) ?? Buffer.alloc(0), bytes), path).toBe(0)
  })

  test('equal packages are equal zips', async () => {
    const [one, other] = await Promise.all([1, 2].map(() => zipPackage(dataPackageFiles(inventedContent()))))
    expect(Buffer.compare(one, other)).toBe(0)
  })
})

describe('finds what is wrong', () => {
  test.for([
    { what: 'a raw byte', pattern: /raw\.csv$/ },
    { what: 'a setup', pattern: /^setups\// },
    { what: 'a result', pattern: /fit-.*\.result\.json$/ },
    { what: 'a table', pattern: /points\.csv$/ },
    { what: 'a picture', pattern: /curve\.svg$/ },
    { what: 'the read-me', pattern: /README/ },
  ])('$what changed or gone', async ({ pattern }) => {
    const path = pathLike(pattern)
    expect(await problemsOf(changed(path, `${textOf(files, path)} `))).toEqual([`fileChanged ${path}`])
    expect(await problemsOf(changed(path, undefined))).toEqual([`fileMissing ${path}`])
  })

  test('a raw byte changed with its checksums in the descriptor: the record itself is its checksum', async () => {
    const path = pathLike(/raw\.csv$/)
    const forged = new TextEncoder().encode('Time,Torque\ns,N·m\n0,0.09\n')
    const copy = changed(
      'datapackage.json',
      textOf(files, 'datapackage.json').replace(sha256(rawTexts[0]), sha256(forged)),
    )
    copy.set(path, forged)
    expect(await problemsOf(copy)).toEqual([`fileChanged ${path}`])
  })

  test('words of people changed in lab.json', async () => {
    const forged = textOf(files, 'lab.json').replace('miscounted', 'forged')
    expect(await problemsOf(changed('lab.json', forged))).toEqual(['fileChanged lab.json'])
  })

  test('all of it at once', async () => {
    const copy = changed('README.md', 'x')
    copy.delete(pathLike(/raw\.txt$/))
    expect((await problemsOf(copy)).sort()).toEqual(['fileChanged README.md', `fileMissing ${pathLike(/raw\.txt$/)}`])
  })

  test.for(['../../etc/passwd', '/etc/passwd', 'C:\\x', '.ssh/id', 'a/../../b'])(
    'a path that leads out: %s',
    async (path) => {
      const copy = changed(
        'datapackage.json',
        textOf(files, 'datapackage.json').replace('"README.md"', JSON.stringify(path)),
      )
      expect(await problemsOf(copy)).toContain(`pathUnsafe ${path}`)
      const lab = textOf(files, 'lab.json').replaceAll(pathLike(/raw\.txt$/), JSON.stringify(path).slice(1, -1))
      expect(await problemsOf(changed('lab.json', lab))).toContain(`pathUnsafe ${path}`)
    },
  )

  test('a link out of the folder is not followed', async () => {
    const there = join(folder, 'linked')
    await writePackageFolder(dataPackageFiles(inventedContent()), there)
    const raw = pathLike(/raw\.csv$/)
    const outside = join(folder, 'outside.csv')
    writeFileSync(outside, rawTexts[0])
    unlinkSync(join(there, raw))
    symlinkSync(outside, join(there, raw))
    const source = await folderSource(there)
    const outcome = source.ok ? await readDataPackage(source.value) : source
    expect(outcome.ok ? [] : outcome.problems.map(({ kind }) => kind)).toEqual(['fileMissing'])
  })

  test('a format that is newer, whatever it holds', async () => {
    expect(await problemsOf(changed('lab.json', '{"format":"kufe lab","version":2}'))).toEqual([
      'packageNewer lab.json',
    ])
  })

  test('a package of somebody else', async () => {
    expect(await problemsOf(changed('lab.json', undefined))).toEqual(['packageForeign package in memory'])
    expect(await problemsOf(changed('lab.json', '{"format":"other"}'))).toEqual(['packageForeign lab.json'])
    expect(await problemsOf(new Map())).toEqual(['packageUnreadable package in memory'])
  })

  test.for(['', 'null', '[]', '{', '"x"', '{"resources":[]}', '{"resources":[{"path":1}]}', '\ud800'])(
    'a descriptor that says %j',
    async (text) => {
      const problems = await problemsOf(changed('datapackage.json', text))
      expect(problems.length).toBeGreaterThan(0)
      expect(problems.every((problem) => problem === 'packageDamaged datapackage.json')).toBe(true)
    },
  )

  test.for(['null', '[]', '{"format":"kufe lab","version":1}', '{"format":"kufe lab","version":1,"records":{}}'])(
    'a list of the lab that says %s',
    async (text) => {
      expect((await problemsOf(changed('lab.json', text)))[0]).toMatch(/^package(Damaged|Foreign) lab\.json/)
    },
  )

  test('things that others hang on', async () => {
    const document = JSON.parse(textOf(files, 'lab.json'))
    const copy = changed('lab.json', JSON.stringify({ ...document, studies: [], setups: [] }))
    const outcome = await read(copy)
    expect(outcome.ok ? [] : outcome.problems.map(({ what }) => what)).toEqual(
      expect.arrayContaining([expect.stringContaining('study oat-drinks'), expect.stringContaining('setup ')]),
    )
  })

  test('a zip that is none, is cut off, or is damaged', async () => {
    const zip = await zipPackage(dataPackageFiles(inventedContent()))
    for (const bytes of [new Uint8Array(0), new Uint8Array(100), zip.subarray(0, zip.length - 40), zip.subarray(40)]) {
      const source = zipSource(bytes, 'x.zip')
      const outcome = source.ok ? await readDataPackage(source.value) : source
      expect(outcome).toMatchObject({ ok: false, problems: [{ kind: 'packageUnreadable' }] })
    }
  })

  test('a folder that is not there, or is a file', async () => {
    writeFileSync(join(folder, 'file'), '')
    for (const name of ['nowhere', 'file']) {
      expect(await folderSource(join(folder, name))).toMatchObject({
        ok: false,
        problems: [{ kind: 'packageUnreadable' }],
      })
    }
  })
})

test('a byte that changes between check and use is found', async () => {
  const copy = new Map(files)
  const outcome = await read(copy)
  if (!outcome.ok) throw new Error('not read')
  copy.set(pathLike(/raw\.csv$/), new TextEncoder().encode('other'))
  await expect(outcome.value.records[0].bytes()).rejects.toThrow('changed while it was read')
})

describe('writing a folder', () => {
  test('never writes over what is there', async () => {
    const there = join(folder, 'there')
    writeFileSync(there, 'mine')
    expect(await writePackageFolder(dataPackageFiles(inventedContent()), there)).toMatchObject({
      ok: false,
      problems: [{ kind: 'packageExists', class: 'wrongUse' }],
    })
    expect(readFileSync(there, 'utf8')).toBe('mine')
  })

  test('leaves nothing half-written where it breaks off', async () => {
    const before = readdirSync(folder)
    const beside = async () => Promise.reject(new Error('no more'))
    const files = dataPackageFiles(inventedContent({ beside }))
    await expect(writePackageFolder(files, join(folder, 'broken'))).rejects.toThrow('no more')
    expect(readdirSync(folder)).toEqual(before)
  })

  test('says where it may not write', async () => {
    writeFileSync(join(folder, 'a-file'), '')
    expect(await writePackageFolder(dataPackageFiles(inventedContent()), join(folder, 'a-file', 'x'))).toMatchObject({
      ok: false,
      problems: [
        { kind: 'packageNotWritten', what: expect.stringContaining('there is a file where a folder is needed') },
      ],
    })
  })
})

test('every problem says what is wrong and begins its mend with a verb', async () => {
  const outcome = await read(changed('README.md', undefined))
  if (outcome.ok) throw new Error('read')
  for (const { kind, what, mend } of outcome.problems) {
    expect(packageProblemKinds).toContain(kind)
    expect(what).toMatch(/^[A-Z].*\.$/)
    expect(mend).toMatch(/^[A-Z][a-z]+ .*\.$/)
  }
})
