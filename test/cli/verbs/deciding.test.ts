// Long because its cases share one lab, which takes seconds to fill.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { run } from '../../../src/cli/run.ts'
import { faultsOf } from '../../figure/faultsOf.ts'
import { capturedDesk } from '../capturedDesk.ts'

let folder: string
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-deciding-'))
  await kufe('lab', 'new', join(folder, 'lab'))
  for (const lacquer of ['a', 'b']) {
    for (const n of ['1', '2', '3']) {
      const record = `examples/lacquer/lacquer-${lacquer}-${n}`
      const words = ['--sample', `lacquer-${lacquer}`, '--study', 'drawer-runners', '--replicate', n]
      await good(
        'add',
        `${record}.csv`,
        '-s',
        `${record}.setup.yaml`,
        ...words,
        '--day',
        `2026-10-0${n}`,
        '--ball-set',
        n,
      )
    }
  }
  await fillCheckStandard()
}, 120_000)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

async function kufe(...words: string[]) {
  const desk = capturedDesk({}, { KUFE_LAB: join(folder, 'lab'), KUFE_BY: 'MK', KUFE_HOME: join(folder, 'home') })
  const code = await run(words, desk)
  return { code, out: desk.out(), err: desk.err() }
}

async function good(...words: string[]) {
  const answer = await kufe(...words)
  if (answer.code !== 0) throw new Error(answer.err)
  return answer
}

/** The measurements of docs/verbs/rig-watch.md: levels of an invented wax, the last ones creeping up. */
const levels = [220, 214, 226, 217, 223, 219, 224, 215, 229, 233, 236, 252]

async function fillCheckStandard() {
  const text = readFileSync('examples/lacquer/wax.run.yaml', 'utf8')
  mkdirSync(join(folder, 'runs'))
  for (const [i, level] of levels.entries()) {
    const name = `check-${i + 1}`
    const file = join(folder, 'check.run.yaml')
    writeFileSync(file, text.replace('boundary: 0.22', `boundary: 0.${level}`))
    await good(
      'simulate',
      file,
      '--name',
      name,
      '--seed',
      String(i + 1),
      '--rows',
      '600',
      '--out',
      join(folder, 'runs'),
    )
    const record = join(folder, 'runs', name)
    const day = `2026-10-${String(i + 1).padStart(2, '0')}`
    await good(
      'add',
      `${record}.csv`,
      '-s',
      `${record}.setup.yaml`,
      '--sample',
      'check-wax',
      '--day',
      day,
      '--draws',
      '100',
    )
  }
}

describe('limit', () => {
  const range = ['--from', '1 mm/s', '--to', '100 mm/s']

  test('a sample that passes, with table and risk', async () => {
    const { code, out, err } = await kufe('limit', 'lacquer-b', '--upper', '0.26', ...range)
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out).toContain('lacquer-b: pass')
    expect(out).toContain('guard band w = U at 95 %')
    expect(out).toMatch(/the pass is wrong with a probability of\s+0\.\d+ %/)
  })

  test('a study: one sample fails, which is told by exit code 1', async () => {
    const { code, out } = await kufe('limit', 'drawer-runners', '--upper', '0.26', ...range)
    expect(code).toBe(1)
    expect(out).toContain('lacquer-a: FAIL')
    expect(out).toContain('lacquer-b: pass')
  })

  test('speeds that nobody measured cannot pass', async () => {
    const { code, out } = await kufe('limit', 'lacquer-b', '--upper', '0.5', '--to', '3 m/s')
    expect(code).toBe(0)
    expect(out).toContain('lacquer-b: cannot tell')
    expect(out).toMatch(/nobody measured from 0\.2 to\s+3 m\/s/)
  })

  test('one record: the verdict is about this mounting', async () => {
    const { out } = await kufe(
      'limit',
      'lacquer-b-1.csv',
      '--upper',
      '0.3',
      '--at',
      '10 mm/s',
      '--rule',
      'simple',
      '--json',
    )
    const [answer] = JSON.parse(out).answers
    expect(answer).toMatchObject({ verdict: 'pass', replicates: 1, speeds: [{ slidingSpeed: 0.01, passGuard: 0 }] })
    expect(answer.sentence).toContain('This mounting of lacquer-b')
  })

  test.for([
    { words: [], says: 'Nobody said the limit' },
    { words: ['--upper', '0.1', '--lower', '0.2'], says: 'not below the upper one' },
    { words: ['--upper', '0.1', '--at', '10 mm/s', '--to', '1 m/s'], says: 'exclude each other' },
    { words: ['--upper', '0.1', '--at', '10'], says: 'has no unit' },
    { words: ['--upper', 'much'], says: 'does not begin with a number' },
  ])('wrong use: $words', async ({ words, says }) => {
    const { code, err } = await kufe('limit', 'lacquer-b', ...words)
    expect(code).toBe(2)
    expect(err).toContain(says)
  })
})

describe('scatter', () => {
  test('causes, intervals and replicates', async () => {
    const { code, out } = await kufe('scatter', 'drawer-runners')
    expect(code).toBe(0)
    expect(out).toContain('Scatter of 6 replicates of 2 samples')
    expect(out).toContain('day and ball set together')
    expect(out).toContain('operator: not known for every record')
    expect(out).toMatch(/\d+ replicates of each sample, each mounted freshly/)
  })

  test('as JSON; at one speed', async () => {
    const { out } = await kufe('scatter', 'drawer-runners', '--at', '10 mm/s', '--difference', '5 %', '--json')
    const { scatter, designs, ask } = JSON.parse(out)
    expect(ask).toMatchObject({ at: 0.01, difference: 0.05 })
    expect(scatter.total.low).toBeLessThan(scatter.total.deviation)
    expect(designs[0].cautiousReplicates.replicates).toBeGreaterThanOrEqual(designs[0].replicates.replicates)
  })

  test('one record alone tells no scatter', async () => {
    const { code, err } = await kufe('scatter', 'lacquer-a-1.csv')
    expect(code).toBe(3)
    expect(err).toContain('too few to tell a scatter')
  })
})

describe('rig-watch', () => {
  test('nothing is watched yet', async () => {
    expect(await kufe('rig-watch')).toMatchObject({
      code: 2,
      err: expect.stringContaining('watches no check standard'),
    })
  })

  test('alarms are told, drawn, printed on reports until answered, and then no more', async () => {
    const svg = join(folder, 'watch.svg')
    const words = ['check-wax', '--at', '2 mm/s', '--baseline', '8', '--why', 'our check standard', '--svg', svg]
    const begun = await kufe('rig-watch', ...words)
    expect(begun.code).toBe(1)
    expect(begun.out).toContain('one value beyond three standard deviations; open')
    expect(begun.out).toContain('12 values; centre 0.')
    expect(faultsOf(readFileSync(svg, 'utf8'))).toEqual([])
    // A regression snapshot: the picture in docs/verbs/rig-watch.md is what the program draws.
    expect(readFileSync('docs/pictures/rig-watch.svg', 'utf8')).toBe(readFileSync(svg, 'utf8'))

    const html = join(folder, 'report.html')
    await good('report', 'lacquer-a-1.csv', '--html', html)
    expect(readFileSync(html, 'utf8')).toContain('Open alarms')
    expect((await kufe('comparable', 'lacquer-a-1.csv', 'lacquer-a-2.csv')).out).toContain(
      'Open alarms of the rig watch',
    )

    const watches = JSON.parse((await kufe('rig-watch', '--json')).out).watches
    const ids: string[] = watches[0].alarms.map(({ id }: { id: string }) => id)
    expect(ids.length).toBeGreaterThan(1)
    expect(await kufe('rig-watch', '--answer', ids[0])).toMatchObject({
      code: 2,
      err: expect.stringContaining('by what it was'),
    })
    expect(await kufe('rig-watch', '--answer', 'no-such', '--why', 'x')).toMatchObject({
      code: 2,
      err: expect.stringContaining('no alarm of this name'),
    })
    for (const id of ids) await kufe('rig-watch', '--answer', id, '--why', 'worn ball set, thrown away')
    const after = await kufe('rig-watch')
    expect(after.code).toBe(0)
    expect(after.out).toContain('answered on 2026-01-02 by MK: worn ball set, thrown away')
    await good('report', 'lacquer-a-1.csv', '--html', html)
    expect(readFileSync(html, 'utf8')).not.toContain('Open alarms')
    expect(readFileSync(html, 'utf8')).toContain('Watch over the rig')
  })

  test('a watch needs a sample that the lab knows, and a speed', async () => {
    expect((await kufe('rig-watch', '--at', '2 mm/s')).err).toContain('which sample is to be watched')
    expect((await kufe('rig-watch', 'check-wax', '--at', 'fast')).code).toBe(2)
    expect((await kufe('rig-watch', 'no-such', '--at', '2 mm/s')).code).not.toBe(0)
  })
})

test('a limit that is kept stands on the report with its verdict and its picture, and judges by itself', async () => {
  const keep = ['--upper', '0.26', '--from', '1 mm/s', '--to', '100 mm/s', '--keep', '--why', 'agreed with the joiner']
  expect((await kufe('limit', 'drawer-runners', ...keep)).code).toBe(1)
  expect((await kufe('limit', 'drawer-runners')).out).toContain('The limit is the paper study/drawer-runners/limit.')
  const html = join(folder, 'limit.html')
  await good('report', 'lacquer-b-2.csv', '--html', html)
  const page = readFileSync(html, 'utf8')
  expect(page).toContain('lacquer-b passes: it keeps to a friction of at most 0.26')
  expect(page).toContain('lacquer-b against a limit')
})

describe('comparable', () => {
  test('two mountings on one rig: what they share cancels, scatter comes from the lab itself', async () => {
    const { code, out } = await kufe('comparable', 'lacquer-a-1.csv', 'lacquer-a-2.csv', '--at', '10 mm/s', '--json')
    expect(code).toBe(0)
    const found = JSON.parse(out)
    expect(found).toMatchObject({ verdict: 'comparable', sameRig: true, sameFixture: true, differences: [] })
    expect(found.numbers).toHaveLength(1)
    expect(found.numbers[0].en).toBeLessThan(1)
    expect(found.repeatability).toBeGreaterThan(0.001)
  })

  test('another fixture, body and liquid: refused with reasons, and no numbers', async () => {
    const { code, out } = await kufe('comparable', 'lacquer-a-1.csv', 'examples/oat-drinks/oat-drink-plain.setup.yaml')
    expect(code).toBe(1)
    expect(out).toContain('They must not be held against each other.')
    expect(out).toContain('balls on a plate | a ball on inclined plates')
    expect(out).toContain('One is dry and the other is not.')
    expect(out).not.toContain('The second against the first')
  })

  test('two setup files need no lab', async () => {
    const desk = capturedDesk({}, {})
    const files = ['examples/lacquer/lacquer-a-1.setup.yaml', 'examples/lacquer/lacquer-b-1.setup.yaml']
    expect(await run(['comparable', ...files], desk)).toBe(0)
    expect(desk.out()).toContain('These are the samples')
  })
})
