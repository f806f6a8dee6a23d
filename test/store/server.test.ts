import { sql } from 'kysely'
import pg from 'pg'
import { describe, expect, onTestFinished, test } from 'vitest'
import type { Engine } from '../../src/store/engine.ts'
import { openEngine } from '../../src/store/opening.ts'
import { change, engines, freshLab, kinds, rawBytes, value } from './engines.ts'

const postgres = engines.filter(({ name }) => name === 'postgres')

/** Ends all other sessions of our user, as a server does that is shut down. */
async function endSessions(where: string): Promise<void> {
  const client = new pg.Client({ connectionString: where })
  await client.connect()
  await client.query(`select pg_terminate_backend(pid) from pg_stat_activity
    where pid <> pg_backend_pid() and application_name = 'kufe server test'`)
  await client.end()
}

const named = (where: string): string => `${where}&application_name=kufe%20server%20test`

describe.each(postgres)('a server', ({ place }) => {
  test('that ends our sessions while nothing happens goes unnoticed', async () => {
    const where = await place()
    const lab = await freshLab(named(where))
    await endSessions(where)
    await new Promise((resolve) => setTimeout(resolve, 100))
    value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
    expect(value(await lab.check())).toMatchObject({ raws: 1, problems: [] })
  })

  test('that ends our session in the middle of a write is said so; nothing is half there, and the next try works', async () => {
    const where = await place()
    const lab = await freshLab(named(where))
    async function* slow(): AsyncGenerator<Uint8Array> {
      yield rawBytes(1)
      await endSessions(where)
    }
    const holder = openEngine(where)
    onTestFinished(() => holder.close())
    let adding: ReturnType<typeof lab.records.add> | undefined
    await holder.write(async () => {
      adding = lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)) // waits for the lock
      await new Promise((resolve) => setTimeout(resolve, 300))
      await endSessions(where)
    })
    expect(adding && kinds(await adding)).toEqual(['labUnreachable'])
    expect(value(await lab.records.list())).toEqual([])
    value(await lab.records.add([{ bytes: slow(), name: 'one.csv' }], change(2)))
    expect(value(await lab.check())).toMatchObject({ raws: 1, problems: [] })
  })

  test('that answers before the disk has is told to wait for it', async () => {
    const where = await place()
    await freshLab(where)
    const hasty = where.replace('-c%20', '-c%20synchronous_commit%3Doff%20-c%20')
    const engine = openEngine(hasty)
    onTestFinished(() => engine.close())
    const setting = async (on: Engine['read']) =>
      (await sql<{ synchronous_commit: string }>`show synchronous_commit`.execute(on)).rows[0].synchronous_commit
    expect(await setting(engine.read)).toBe('off')
    expect(await engine.write(setting)).toBe('on')
  })
})
