import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { run } from '../../../src/cli/run.ts'
import { capturedDesk } from '../capturedDesk.ts'

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-further-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

const records = 'test/data/records'
const of = (name: string): readonly string[] => [`${records}/${name}.csv`, '--setup', `${records}/${name}.setup.yaml`]

/** Runs a command line and answers what it said. */
async function said(...words: readonly string[]): Promise<{ code: number; out: string; err: string }> {
  const desk = capturedDesk()
  const code = await run(words, desk)
  return { code, out: desk.out(), err: desk.err() }
}

test('kufe stick-slip names steps and bracket, draws, and answers 1 with --strict', async () => {
  const svg = join(folder, 'vibration.svg')
  const { code, out } = await said('stick-slip', ...of('stick-slip'), '--svg', svg, '--strict')
  expect(code).toBe(1)
  expect(out).toMatch(/Stick–slip on steps 1–5\./)
  expect(out).toMatch(/between 1\.82 mm\/s and 3\.16 mm\/s/)
  expect(readFileSync(svg, 'utf8')).toMatch(/^<svg /)
  const json = JSON.parse((await said('stick-slip', ...of('stick-slip'), '--json')).out)
  expect(json.steps.filter(({ verdict }: { verdict: string }) => verdict === 'stickSlip')).toHaveLength(5)
  expect(json.schemaVersion).toBe('1')
})

test('kufe wear takes typed scars and profiles before those of the setup', async () => {
  const profile = join(folder, 'track.txt')
  const rows = Array.from({ length: 401 }, (_, i) => (i - 200) * 5e-3)
  writeFileSync(
    profile,
    `x (mm); z (µm)\n${rows.map((x) => `${x}; ${-2 * Math.max(0, 1 - (x / 0.3) ** 2)}`).join('\n')}`,
  )
  const words = ['wear', ...of('wearing-ball'), '--scar', '0.42 x 0.40 mm', '--scar', '0.44 mm', '--profile', profile]
  const json = JSON.parse((await said(...words, '--json')).out)
  expect(json.balls.scars).toHaveLength(2)
  // 4/3·a·d of the parabola.
  expect(Math.abs(json.grooves[0].area / 800e-12 - 1)).toBeLessThan(0.01)
  expect(json.gap.clear).toBe(true)
  const { out } = await said(...words)
  expect(out).toMatch(/The track lost/)
  expect(out).toMatch(/stands\s+clear of the drift/)
})

test.for([
  { words: ['--scar', '0.4'], what: /without a unit|unit/i },
  {
    words: ['--scar', '0.4 mm', '--scar', '0.4 mm', '--scar', '0.4 mm', '--scar', '0.4 mm'],
    what: /4 scars, but the fixture has 3 bodies/,
  },
  { words: ['--profile', 'nowhere.txt'], what: /no such file/i },
])('kufe wear refuses $words with a mend', async ({ words, what }) => {
  const { code, err } = await said('wear', ...of('wearing-ball'), ...words)
  expect([2, 3]).toContain(code)
  expect(err).toMatch(what)
})

test('kufe turn-map draws map, change and places, and finds nothing on an even track', async () => {
  const [map, change] = [join(folder, 'map.svg'), join(folder, 'change.svg')]
  const { code, out } = await said(
    'turn-map',
    ...of('wearing-ball'),
    '--difference',
    '--svg',
    map,
    '--change-svg',
    change,
    '--strict',
  )
  expect(code).toBe(0)
  expect(out).toMatch(/No place of the turn stands out/)
  for (const file of [map, change]) expect(readFileSync(file, 'utf8')).toMatch(/^<svg /)
  const json = JSON.parse(
    (await said('turn-map', ...of('wearing-ball'), '--json', '--columns', '72', '--rows', '50')).out,
  )
  expect([json.map.columns, json.map.rows <= 50, json.map.mean.length]).toEqual([72, true, 72 * json.map.rows])
})

test('kufe master says which viscosities it took, and refuses one record alone', async () => {
  const files = ['plain', 'creamy'].map((name) => `examples/oat-drinks/oat-drink-${name}.csv`)
  const { code, out } = await said('master', ...files)
  expect(code).toBe(0)
  expect(out).toMatch(/over ηv \(N\/m\)/)
  expect(out).toMatch(/3\.5 mPa·s/)
  const json = JSON.parse((await said('master', ...files, '--axis', 'per-load', '--json')).out)
  expect(json.definition.formula).toBe('ηv/W')
  expect(json.fit.shifts).toHaveLength(2)
  const alone = await said('master', files[0])
  expect([alone.code, alone.err]).toEqual([2, expect.stringMatching(/two records or more/)])
})
