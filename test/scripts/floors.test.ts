import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { checkFloors, checkRooms } from '../../scripts/floors.ts'
import { type Floor, floors } from '../../scripts/floorTable.ts'

/** Files that break one rule each, by path, with what the check must say of them. */
const planted: [path: string, text: string, complaint: string][] = [
  ['core/numeric/up.ts', "import '../reduce/index.ts'", 'core/numeric may import only core/terms'],
  ['core/terms/side.ts', "import '../numeric/index.ts'", 'core/terms may import no other room'],
  ['core/curve/types.ts', "import type {} from '../reduce/index.ts'", 'core/curve may import only'],
  ['core/reduce/deep.ts', "import '../terms/si.ts'", 'a room is entered by its index.ts'],
  ['io/deep.ts', "import '../core/terms/si.ts'", 'a room is entered by its index.ts'],
  ['core/stats/file.ts', "import 'node:fs'", 'core/stats uses no Node built-in'],
  ['core/stats/old.ts', "import 'fs'", 'core/stats uses no Node built-in'],
  ['core/rig/package.ts', "import { parse } from 'yaml'\nparse('')", 'core/rig uses no package'],
  ['core/rig/later.ts', "export const a = () => import('yaml')", 'core/rig uses no package'],
  ['figure/file.ts', "import 'node:path'", 'figure uses no Node built-in'],
  ['figure/solver.ts', "import '../core/numeric/index.ts'", 'figure may import only core/terms, core/quantity'],
  ['core/film/about.ts', "import type {} from './round.ts'", 'no circle'],
  ['core/fixture/lost.ts', "import './nowhere.ts'", 'nothing that does not exist'],
  ['cli/early.ts', "import '../server/index.ts'", 'of the command line, serve alone starts the server'],
  ['web/page.ts', "import { open } from '../server/index.ts'\nopen()", 'web takes only types from server'],
  ['core/quantity/tested.ts', "import '../../../test/setup/pure.ts'", 'src stands alone'],
]

/** Files that the planted ones need. */
const props: [path: string, text: string][] = [
  ['core/numeric/index.ts', 'export {}'],
  ['core/reduce/index.ts', 'export {}'],
  ['core/film/round.ts', "import './about.ts'"], // the other half of the circle, which is named once
]

/** Files that break none, so that the rules are seen not to refuse everything. */
const allowed: [path: string, text: string][] = [
  ['cli/serve.ts', "import '../server/index.ts'"],
  ['web/client.ts', "import type { open } from '../server/index.ts'\nexport type Open = typeof open"],
  ['io/fine.ts', "import 'node:fs'\nimport 'yaml'\nimport '../core/index.ts'\nimport '../core/terms/index.ts'"],
  ['server/index.ts', 'export const open = (): void => {}'],
  ['core/index.ts', "export * from './terms/index.ts'"],
]

let root: string
let complaints: string[]

beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), 'kufe-floors-'))
  cpSync('src', join(root, 'src'), { recursive: true })
  cpSync('test/setup', join(root, 'test/setup'), { recursive: true })
  symlinkSync(join(process.cwd(), 'node_modules'), join(root, 'node_modules'))
  for (const [path, text] of [...props, ...allowed, ...planted]) {
    mkdirSync(dirname(join(root, 'src', path)), { recursive: true })
    writeFileSync(join(root, 'src', path), text)
  }
  complaints = await checkFloors(root)
})

afterAll(() => rmSync(root, { recursive: true }))

test.for(planted)('src/%s is refused', ([path, , complaint]) => {
  const about = complaints.filter((line) => line.startsWith(`src/${path} `))
  expect(about.join('\n')).toContain(complaint)
})

test.for(allowed)('src/%s is let through', ([path]) => {
  expect(complaints.filter((line) => line.startsWith(`src/${path} `))).toEqual([])
})

test('a folder without a row, a row without a file and a planned room with code are named', () => {
  const outside = { may: [], packages: true, builtins: true }
  const table: Floor[] = [
    { room: 'cellar', ...outside },
    { room: 'hall', ...outside },
    { room: 'tower', ...outside, planned: true },
  ]
  const oneFileEach = ['src/cellar/index.ts', 'src/hall/index.ts']
  expect(checkRooms(oneFileEach, table)).toEqual([])
  expect(checkRooms([...oneFileEach, 'src/attic/index.ts', 'src/stray.ts'], table)).toEqual([
    'src/attic/index.ts lies in a folder without a row in scripts/floorTable.ts',
    'src/stray.ts lies in a folder without a row in scripts/floorTable.ts',
  ])
  expect(checkRooms(['src/hall/index.ts'], table)).toEqual(['cellar has a row in scripts/floorTable.ts but no file'])
  expect(checkRooms([...oneFileEach, 'src/tower/index.ts'], table)).toEqual([
    'tower has code: take "planned" from its row in scripts/floorTable.ts',
  ])
})

test('rooms lie above what they import, so that the table itself has no circle', () => {
  const height = new Map(floors.map(({ room }, index) => [room, index]))
  for (const { room, may } of floors) {
    for (const below of may) {
      if (room === 'core' && below === 'core') continue
      expect(height.get(below), `${room} imports ${below}`).toBeLessThan(height.get(room) ?? -1)
    }
  }
})
