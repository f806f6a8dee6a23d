import { existsSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { floors } from '../../scripts/floorTable.ts'
import { pages } from './pages.ts'

const coreRooms = floors.map(({ room }) => room).filter((room) => /^core(\/|$)/.test(room))

/** Rooms that a cell of the table names, `all of core` spelled out. */
function roomsIn(cell: string): string[] {
  const all = /^all of `core`( below it but `([a-z/]+)`)?/.exec(cell)
  const named = [...cell.slice(all?.[0].length ?? 0).matchAll(/`([a-z/]+)`/g)].map(([, name]) => name)
  if (all === null) return named
  const whole = all[1] === undefined ? coreRooms : coreRooms.slice(0, coreRooms.indexOf('core/plan'))
  return [...whole.filter((room) => room !== all[2]), ...named]
}

test('CONTRIBUTING.md shows the table of the floors as it is', () => {
  const rows = [...readFileSync('CONTRIBUTING.md', 'utf8').matchAll(/^\| `([a-z/]+)` \| [^|]+ \| ([^|]+) \|$/gm)]
  const shown = Object.fromEntries(
    rows.map(([, room, may]) => [room, roomsIn(may.replace('its `serve` alone', '')).sort()]),
  )
  expect(shown).toEqual(Object.fromEntries(floors.map(({ room, may }) => [room, [...may].sort()])))
})

test.for(pages)('%s names paths that exist', (page) => {
  const named = [
    ...readFileSync(page, 'utf8').matchAll(/`((?:src|test|scripts|bench|docs|bin|examples|schema)\/[\w./-]*)`/g),
  ]
  expect(named.map(([, path]) => path).filter((path) => !existsSync(path))).toEqual([])
})
