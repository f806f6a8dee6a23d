import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { LabCall } from '../../../../src/bench/lab/index.ts'
import { exportLab, importPackage } from '../../../../src/bench/lab/package/index.ts'
import { checksum } from '../../../../src/store/index.ts'
import { add, demoFolder, freshLab, kinds, outside, temporaryFolder, value } from '../labs.ts'

const paper = {
  ...{ subject: 'lab', subjectId: 'lab', kind: 'material', name: 'x', version: 1, supersedes: null, content: {} },
  change: { number: 9, at: '2026-11-25T09:00:00.000Z', who: 'AB', why: '' },
}

const elsewhere = (): LabCall => ({ place: join(temporaryFolder(), 'other'), who: 'ZZ', why: '' })

describe('what cannot be taken in', () => {
  let whole: string
  beforeAll(() => {
    whole = join(mkdtempSync(join(tmpdir(), 'kufe-package-')), 'whole')
  })
  afterAll(() => rmSync(join(whole, '..'), { recursive: true, force: true }))

  async function spoiled(spoil: (folder: string) => void): Promise<string[]> {
    if (!existsSync(whole)) {
      const call = await freshLab()
      value((await add(call, [demoFolder('wax')])).done)
      value(await exportLab({ word: undefined, out: whole, creators: [], reports: false }, call, outside))
    }
    const copy = join(temporaryFolder(), 'copy')
    cpSync(whole, copy, { recursive: true })
    spoil(copy)
    const other = elsewhere()
    const problems = kinds(await importPackage(copy, other, outside))
    expect(existsSync(other.place)).toBe(false) // nothing was begun
    return problems
  }

  const labJson = (change: (lab: ReturnType<typeof JSON.parse>) => void) => (folder: string) => {
    const file = join(folder, 'lab.json')
    const lab = JSON.parse(readFileSync(file, 'utf8'))
    change(lab)
    writeFileSync(file, JSON.stringify(lab))
    const descriptor = JSON.parse(readFileSync(join(folder, 'datapackage.json'), 'utf8'))
    const resource = descriptor.resources.find(({ path }: { path: string }) => path === 'lab.json')
    resource.hash = `sha256:${checksum(readFileSync(file))}`
    writeFileSync(join(folder, 'datapackage.json'), JSON.stringify(descriptor))
  }

  test('a raw file with another byte', async () => {
    const raw = (folder: string): string => join(folder, 'records', readdirSync(join(folder, 'records'))[0], 'raw.csv')
    expect(await spoiled((folder) => appendFileSync(raw(folder), 'x'))).toEqual(['fileChanged'])
  })

  test('what no lab can hold', async () => {
    const spoil = labJson((lab) => {
      lab.records[0].versions[0].replicate = 0
      lab.results[0].kind = 'guess'
      lab.results[0].change.who = ' '
      lab.papers = [{ ...paper, kind: 'poem' }]
    })
    expect(await spoiled(spoil)).toEqual(Array(4).fill('packageUnusable'))
  })

  test('a paper about a study that is not there', async () => {
    const spoil = labJson((lab) => {
      lab.papers = [{ ...paper, subject: 'study', subjectId: 'none' }]
    })
    expect(await spoiled(spoil)).toEqual(['thingMissing'])
  })

  test('a folder that is no package, a file that is no zip, nothing at all', async () => {
    const folder = temporaryFolder()
    mkdirSync(join(folder, 'empty'))
    writeFileSync(join(folder, 'poem.zip'), 'roses are red')
    const taken = (name: string) => importPackage(join(folder, name), elsewhere(), outside).then(kinds)
    expect(await taken('empty')).toEqual(['packageUnreadable'])
    expect(await taken('poem.zip')).toEqual(['packageUnreadable'])
    expect(await taken('none.zip')).toEqual(['fileMissing'])
  })
})

test('a package is never written over', async () => {
  const call = await freshLab()
  value((await add(call, [demoFolder('wax')])).done)
  const folder = temporaryFolder()
  for (const name of ['package', 'package.zip']) {
    const args = { word: undefined, out: join(folder, name), creators: [], reports: false }
    value(await exportLab(args, call, outside))
    expect(kinds(await exportLab(args, call, outside))).toEqual([name.endsWith('zip') ? 'fileExists' : 'packageExists'])
  }
})
