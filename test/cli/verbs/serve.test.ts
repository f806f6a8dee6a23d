import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test, vi } from 'vitest'
import { movedWindowOption } from '../../../src/cli/movedWindows.ts'
import { run } from '../../../src/cli/run.ts'
import { capturedDesk } from '../capturedDesk.ts'

// The page itself is built and looked at in test/web.
vi.mock('../../../src/server/page/builtPage.ts', () => ({ builtPage: async () => ({ ok: true, value: '/nowhere' }) }))

const folder = mkdtempSync(join(tmpdir(), 'kufe-serve-'))
afterAll(() => rmSync(folder, { recursive: true, force: true, maxRetries: 3 }))
const place = join(folder, 'lab')

describe('kufe serve', () => {
  test('says its address, answers there, and ends in order when it is asked to', async () => {
    expect(await run(['lab', 'new', place, '--by', 'MK'], capturedDesk())).toBe(0)
    const stop = { aborted: false }
    const desk = { ...capturedDesk(), stopOnInterrupt: () => stop }
    const ended = run(['serve', '--lab', place, '--port', '0', '--by', 'MK', '--json'], desk)
    while (desk.out() === '') await new Promise((go) => setTimeout(go, 20))
    const { address } = JSON.parse(desk.out())
    expect(address).toMatch(/^http:\/\/localhost:\d+\/$/)
    const answer = await (await fetch(`${address}api/lab`)).json()
    expect(answer).toMatchObject({ name: 'lab', demo: false })
    stop.aborted = true
    expect(await ended).toBe(0)
    await expect(fetch(`${address}api/lab`)).rejects.toThrow()
    expect(desk.err()).toBe('')
  })

  test('a lab that is not there', async () => {
    const desk = capturedDesk()
    expect(await run(['serve', '--lab', join(folder, 'none'), '--port', '0', '--by', 'MK'], desk)).toBe(4)
    expect(desk.err()).toMatch(/no lab|There is/i)
  })

  test('a port that is taken is said where it was named, and passed by where it was not', async () => {
    const other = createServer()
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve))
    const { port } = other.address() as AddressInfo // it listens on a port
    const named = capturedDesk()
    expect(await run(['serve', '--lab', place, '--port', String(port), '--by', 'MK'], named)).toBe(2)
    expect(named.err()).toContain(`Port ${port} is taken`)
    expect(named.err()).toContain('--port 0')
    other.close()
  })

  test('the demo lab in a folder that stays', async () => {
    const demo = join(folder, 'demo')
    const desk = capturedDesk({}, { KUFE_BY: 'MK' })
    expect(await run(['serve', '--demo', demo, '--port', '0', '--json'], desk)).toBe(0)
    expect(JSON.parse(desk.out()).address).toMatch(/^http/)
    expect(existsSync(join(demo, 'kufe.sqlite'))).toBe(true)
  })

  test('the demo lab for this time alone goes when the bench is closed', async () => {
    const before = readdirSync(tmpdir()).filter((name) => name.startsWith('kufe-demo-'))
    const desk = capturedDesk({}, { KUFE_BY: 'MK' })
    expect(await run(['serve', '--demo', '--port', '0', '--json'], desk)).toBe(0)
    const after = readdirSync(tmpdir()).filter((name) => name.startsWith('kufe-demo-') && !before.includes(name))
    expect(after.filter((name) => !name.startsWith('kufe-demo-test-'))).toEqual([])
  })
})

describe('kufe demo', () => {
  test('on a terminal shows one record and serves the bench; in a pipe it shows all and ends', async () => {
    const terminal = capturedDesk({ terminal: true })
    expect(await run(['demo'], terminal)).toBe(0)
    expect(terminal.out()).toContain('wax.csv')
    expect(terminal.out()).not.toContain('lacquer-b-1.csv')
    expect(terminal.out()).toMatch(/The bench is open at http:\/\/localhost:\d+\//)
    const ending = capturedDesk({ terminal: true })
    expect(await run(['demo', '--no-bench'], ending)).toBe(0)
    expect(ending.out()).toContain('lacquer-b-1.csv')
    expect(ending.out()).not.toContain('The bench is open')
    const pipe = capturedDesk()
    expect(await run(['demo', 'wax'], pipe)).toBe(0)
    expect(pipe.out()).not.toContain('The bench is open')
  })
})

describe('kufe amend --window', () => {
  test('windows are read, and all that is none is told', () => {
    expect(movedWindowOption('3=12.5..20', undefined)).toEqual([{ step: 3, from: 12.5, to: 20 }])
    expect(movedWindowOption('4=1e2..2e2', [{ step: 3, from: 1, to: 2 }])).toHaveLength(2)
    for (const text of ['3', '3=5', '3=5..', '3=5..5', '3=6..5', 'x=1..2', '3.5=1..2', '3=a..b', '']) {
      expect(() => movedWindowOption(text, undefined)).toThrow(/STEP=FROM\.\.TO/)
    }
  })

  test('moves, keeps the others, verifies, and goes back', async () => {
    const say = async (...words: string[]) => {
      const desk = capturedDesk({}, { KUFE_LAB: place, KUFE_BY: 'MK' })
      const code = await run(words, desk)
      return { code, out: desk.out(), err: desk.err() }
    }
    expect((await say('add', 'examples/lacquer/wax.csv')).code).toBe(0)
    expect((await say('amend', 'wax.csv', '--window', '4=40..46', '--why', 'a bump')).out).toContain('version 1')
    expect((await say('amend', 'wax.csv', '--window', '5=52..58', '--why', 'another')).out).toContain('version 2')
    const shown = await say('show', 'wax.csv', '--json')
    expect(shown.out).toContain('40 s to 46 s counts')
    expect(shown.out).toContain('52 s to 58 s counts')
    expect((await say('verify', 'wax.csv')).code).toBe(0)
    const far = await say('amend', 'wax.csv', '--window', '4=1000..1001', '--why', 'wrong')
    expect(far).toMatchObject({ code: 3 })
    expect(far.err).toContain('Let it lie within its step')
    expect((await say('amend', 'wax.csv', '--no-window', '--why', 'it was nothing')).out).toContain('version 3')
    expect((await say('show', 'wax.csv', '--json')).out).not.toContain('Somebody moved')
    expect((await say('verify', 'wax.csv')).code).toBe(0)
  })
})
