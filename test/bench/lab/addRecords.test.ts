import { appendFileSync, cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { fitRecord, reduceFile, resultText } from '../../../src/bench/index.ts'
import { add, demoFolder, freshLab, kinds, look, outside, quick, temporaryFolder, value } from './labs.ts'

describe('adding', () => {
  test('keeps a record under its checksum with what is said, and the very bytes of "kufe reduce --json" as its result', async () => {
    const call = await freshLab()
    const folder = demoFolder('wax')
    const file = join(folder, 'wax.csv')
    const { done, told } = await add(call, [file], {
      names: { study: 'Drawer runners', sample: 'wax' },
      replicate: 3,
      facts: { mountedBy: 'AB', day: '2026-11-24' },
    })
    value(done)
    expect(told).toEqual(['kept wax.csv', 'reduced wax.csv'])
    const reduced = value(
      await reduceFile(
        { file, setup: join(folder, 'wax.setup.yaml'), reading: quick.reading, options: quick.options },
        outside,
      ),
    )
    await look(call, async (lab) => {
      const [record] = value(await lab.records.list())
      expect(record).toMatchObject({ name: 'wax.csv', study: 'drawer-runners', sample: 'wax', replicate: 3 })
      expect(record).toMatchObject({ mountedBy: 'AB', day: '2026-11-24', ballSet: null, version: 1 })
      expect(Buffer.from(value(await lab.records.bytes(record.id)))).toEqual(readFileSync(file))
      expect(value(await lab.setups.get(record.setup ?? '')).text).toBe(
        readFileSync(join(folder, 'wax.setup.yaml'), 'utf8'),
      )
      expect(value(await lab.studies.get('drawer-runners')).title).toBe('Drawer runners')
      const [result] = value(await lab.results.list())
      expect(value(await lab.results.text(result.id))).toBe(resultText(fitRecord(reduced, outside)))
    })
  })

  test('recognises the same bytes under another name, and leaves what is known as it is', async () => {
    const call = await freshLab()
    const folder = demoFolder('wax')
    value((await add(call, [join(folder, 'wax.csv')], { names: { sample: 'wax' } })).done)
    cpSync(join(folder, 'wax.csv'), join(folder, 'copy.csv'))
    const again = await add(call, [folder], { setup: join(folder, 'wax.setup.yaml'), names: { sample: 'other' } })
    expect(again.told).toEqual(['known copy.csv', 'known wax.csv'])
    await look(call, async (lab) => {
      expect(value(await lab.records.list())).toMatchObject([{ name: 'wax.csv', sample: 'wax', version: 1 }])
      expect(value(await lab.results.list())).toHaveLength(1)
      expect(value(await lab.samples.list()).map(({ id }) => id)).toEqual(['wax']) // nothing new, so no new sample
    })
  })

  test('two equal files of one call are one record', async () => {
    const call = await freshLab()
    const folder = demoFolder('wax')
    cpSync(join(folder, 'wax.csv'), join(folder, 'copy.csv'))
    const { told } = await add(call, [folder], { setup: join(folder, 'wax.setup.yaml') })
    expect(told).toEqual(['kept copy.csv', 'known wax.csv', 'reduced copy.csv'])
  })

  test('tells a bad file with its problems, keeps nothing of it, and goes on', async () => {
    const call = await freshLab()
    const folder = demoFolder('lacquer-a-1', 'wax')
    writeFileSync(join(folder, 'empty.csv'), '')
    writeFileSync(join(folder, 'poem.txt'), 'roses are red\nviolets are blue\n')
    const { told, events } = await add(call, [folder, join(folder, 'gone.csv')], {
      setup: join(folder, 'wax.setup.yaml'),
    })
    expect(told.sort()).toEqual([
      'kept lacquer-a-1.csv',
      'kept wax.csv',
      'reduced lacquer-a-1.csv',
      'reduced wax.csv',
      'refused empty.csv',
      'refused gone.csv',
      'refused poem.txt',
    ])
    for (const event of events) if (event.what === 'refused') expect(event.problems.length).toBeGreaterThan(0)
    await look(call, async (lab) => expect(value(await lab.records.list())).toHaveLength(2))
  })

  test('each record has its setup beside it; one without is told', async () => {
    const call = await freshLab()
    const folder = demoFolder('lacquer-a-1', 'wax')
    rmSync(join(folder, 'lacquer-a-1.setup.yaml'))
    const { told, events } = await add(call, [folder])
    expect(told).toEqual(['refused lacquer-a-1.csv', 'kept wax.csv', 'reduced wax.csv'])
    expect(events[0]).toMatchObject({ problems: [{ kind: 'setupMissing' }] })
  })

  test('a wrong setup for all is told once, and nothing is kept', async () => {
    const call = await freshLab()
    const folder = demoFolder('wax')
    const setup = join(folder, 'wrong.yaml')
    writeFileSync(setup, 'fixture: { kind: balls on plat }\n')
    const { done, events } = await add(call, [folder], { setup })
    expect(kinds(done).length).toBeGreaterThan(0)
    expect(events).toEqual([])
    await look(call, async (lab) => expect(value(await lab.setups.list())).toEqual([]))
  })

  test('a record that its setup cannot reduce is kept, and told as not reduced', async () => {
    const call = await freshLab()
    const folder = temporaryFolder()
    // Torque and time are there, so it is a record; without force in file or setup there is no friction.
    const rows = Array.from({ length: 300 }, (_, i) => `${i / 10},${(0.001).toFixed(6)},1`)
    writeFileSync(join(folder, 'noforce.csv'), ['Time [s],Torque [N·m],Angular velocity [rad/s]', ...rows].join('\n'))
    const setup = join(folder, 'setup.yaml')
    const text = readFileSync('examples/lacquer/wax.setup.yaml', 'utf8')
    writeFileSync(setup, text.replace(/^ {2}axialForce: 5 N\n/m, ''))
    const { told, events } = await add(call, [folder], { setup })
    expect(told).toEqual(['kept noforce.csv', 'notReduced noforce.csv'])
    expect(events[1]).toMatchObject({ problems: [expect.objectContaining({ class: 'badInput' })] })
  })

  test('replicates count up, in the order of the files', async () => {
    const call = await freshLab()
    value((await add(call, [demoFolder('lacquer-a-1', 'lacquer-a-2', 'lacquer-a-3')], { replicate: 2 })).done)
    await look(call, async (lab) => {
      const records = value(await lab.records.list())
      expect(records.map(({ name, replicate }) => [name, replicate])).toEqual([
        ['lacquer-a-1.csv', 2],
        ['lacquer-a-2.csv', 3],
        ['lacquer-a-3.csv', 4],
      ])
    })
  })

  test('what was stopped between keeping and reducing goes on with the same call', async () => {
    const call = await freshLab()
    const folder = demoFolder('lacquer-a-1', 'wax')
    const stop = { aborted: false }
    const progress = (what: string): void => {
      if (what === 'keeping') stop.aborted = true
    }
    const events = await add(call, [folder], { outside: { ...outside, stop, progress } })
    expect(events.told).toEqual(['kept lacquer-a-1.csv']) // one is kept, then it stops
    expect((await add(call, [folder])).told).toEqual([
      'known lacquer-a-1.csv',
      'kept wax.csv',
      'reduced lacquer-a-1.csv',
      'reduced wax.csv',
    ])
  })

  test('threads make the same lab as no threads', async () => {
    const folder = demoFolder('wax')
    const text = readFileSync(join(folder, 'wax.csv'), 'utf8')
    for (let i = 1; i < 14; i++) writeFileSync(join(folder, `wax ${i}.csv`), `${text}${'\n'.repeat(i)}`)
    const labs = await Promise.all(
      [0, 2].map(async (threads) => {
        const call = await freshLab()
        value((await add(call, [folder], { setup: join(folder, 'wax.setup.yaml'), threads })).done)
        return look(call, async (lab) => [value(await lab.history.list()), value(await lab.results.list())])
      }),
    )
    expect(labs[1]).toEqual(labs[0])
    expect(labs[0][1]).toHaveLength(14)
  })

  test('nothing to add is said', async () => {
    const call = await freshLab()
    const folder = temporaryFolder()
    writeFileSync(join(folder, 'notes.md'), 'x')
    expect(kinds((await add(call, [folder])).done)).toEqual(['nothingToAdd'])
  })

  test('without a lab, the place is named', async () => {
    const call = { place: join(temporaryFolder(), 'none'), who: 'MK', why: '' }
    expect(kinds((await add(call, [demoFolder('wax')])).done)).toEqual(['labMissing'])
  })
})

test('a file that grows is another record, and the first stays', async () => {
  const call = await freshLab()
  const folder = demoFolder('wax')
  value((await add(call, [folder])).done)
  appendFileSync(join(folder, 'wax.csv'), '\n')
  expect((await add(call, [folder])).told).toEqual(['kept wax.csv', 'reduced wax.csv'])
  await look(call, async (lab) => expect(value(await lab.records.list())).toHaveLength(2))
})
