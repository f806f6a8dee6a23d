import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { expect, test } from 'vitest'
import { recordFiles } from '../../../src/bench/lab/recordFiles.ts'
import { freshLab, temporaryFolder } from './labs.ts'

function folderWith(...names: readonly string[]): string {
  const folder = temporaryFolder()
  for (const name of names) {
    mkdirSync(join(folder, name, '..'), { recursive: true })
    writeFileSync(join(folder, name), 'x')
  }
  return folder
}

test('a folder gives its records in the order in which people count, those of folders within it too', () => {
  const folder = folderWith(
    'run 10.csv',
    'run 2.csv',
    'deep/a.XLSX',
    'notes.md',
    'run 2.setup.yaml',
    '.hidden.csv',
    'drink.flow.csv',
  )
  const { files, aside, problems } = recordFiles([folder])
  expect(files.map((file) => relative(folder, file))).toEqual(['deep/a.XLSX', 'run 2.csv', 'run 10.csv'])
  expect({ aside, problems }).toEqual({ aside: 3, problems: [] })
})

test('a file that is named is taken whatever it is called, and once', () => {
  const folder = folderWith('record.001', 'a.csv')
  const files = ['record.001', 'a.csv'].map((name) => join(folder, name))
  expect(recordFiles([...files, folder, files[0]]).files).toEqual(files)
})

test('what is not there is told, and the others are taken', () => {
  const folder = folderWith('a.csv')
  const { files, problems } = recordFiles([join(folder, 'b.csv'), join(folder, 'a.csv')])
  expect(files).toHaveLength(1)
  expect(problems).toMatchObject([{ kind: 'fileMissing', place: { file: join(folder, 'b.csv') } }])
})

test('a lab is no folder of records, and links to folders are not followed', async () => {
  const { place } = await freshLab()
  writeFileSync(join(place, 'a.csv'), 'x')
  expect(recordFiles([join(place, '..')]).files).toEqual([])
  const folder = folderWith('a.csv')
  symlinkSync(folder, join(folder, 'circle'))
  symlinkSync(join(folder, 'a.csv'), join(folder, 'link.csv'))
  symlinkSync(join(folder, 'gone'), join(folder, 'broken.csv'))
  expect(recordFiles([folder]).files.map((file) => relative(folder, file))).toEqual(['a.csv', 'link.csv'])
})
