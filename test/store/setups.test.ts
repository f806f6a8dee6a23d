import { describe, expect, test } from 'vitest'
import { checksum } from '../../src/store/index.ts'
import { change, engines, freshLab, kinds, value } from './engines.ts'

const setupText = 'rig:\n  name: Rig 1 # the one at the window\n'

describe.each(engines)('setups on $name', ({ place }) => {
  test('keeps a setup as it was written, once', async () => {
    const lab = await freshLab(await place())
    const first = value(await lab.setups.add(setupText, change(1)))
    expect(first).toMatchObject({
      isNew: true,
      setup: { sha256: checksum(setupText), text: setupText, change: change(1) },
    })
    expect(value(await lab.setups.add(setupText, change(2)))).toEqual({ ...first, isNew: false })
    expect(value(await lab.setups.add(`${setupText}\r\n`, change(2))).isNew).toBe(true)
    expect(value(await lab.setups.get(checksum(setupText)))).toEqual(first.setup)
    expect(value(await lab.setups.list())).toEqual([checksum(setupText), checksum(`${setupText}\r\n`)])
    expect(kinds(await lab.setups.get('0'.repeat(64)))).toEqual(['notThere'])
  })
})
