import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type ByteSource, memorySource, wholeOf, withBegun } from '../../../src/io/table/byteSource.ts'
import { utf16Source } from '../../../src/io/table/utf16Source.ts'
import { wholeLines } from '../../../src/io/table/wholeLines.ts'

async function collect(
  source: ByteSource,
  begun: Uint8Array,
  lineEnd: number,
): Promise<{ text: string; cuts: string[] }> {
  let text = ''
  const cuts: string[] = []
  for await (const { bytes, from, to } of wholeLines({ source, begun, lineEnd, ended: false })) {
    const piece = new TextDecoder('latin1').decode(bytes.subarray(from, to))
    text += piece
    cuts.push(piece.slice(-1))
    bytes[to] = 88 // the reader may overwrite it
  }
  return { text, cuts }
}

const block = 1 << 20

test.for([
  ['LF', '\n', 10],
  ['CRLF', '\r\n', 10],
  ['CR', '\r', 13],
] as [string, string, number][])('windows of whole lines, %s', async ([, end, lineEnd]) => {
  const size = fc.oneof(fc.nat(200), fc.constantFrom(70_000, block - 1, block, 1_300_000))
  await fc.assert(
    fc.asyncProperty(fc.array(size, { maxLength: 12 }), fc.nat(1000), fc.boolean(), async (lengths, begun, ended) => {
      const text = lengths.map((length, n) => String(n % 10).repeat(length)).join(end) + (ended ? end : '')
      const bytes = new TextEncoder().encode(text)
      const cut = Math.min(begun, bytes.length)
      const got = await collect(memorySource(bytes.subarray(cut)), bytes.subarray(0, cut), lineEnd)
      expect(got.text === text).toBe(true)
      for (const last of got.cuts.slice(0, -1)) expect(last).toBe(end.at(-1))
    }),
    { numRuns: 30 },
  )
})

test('UTF-16 over the ends of blocks, with the hash of the bytes as they came', async () => {
  const text = 'µ°€𝛍 1,5\n'.repeat(60_000)
  for (const big of [false, true]) {
    const bytes = new Uint8Array(2 * text.length)
    const view = new DataView(bytes.buffer)
    for (let n = 0; n < text.length; n++) view.setUint16(2 * n, text.charCodeAt(n), !big)
    const raw = memorySource(bytes)
    const utf8 = await wholeOf(utf16Source(raw, big ? 'utf-16be' : 'utf-16le'), 1 << 24)
    expect(new TextDecoder().decode(utf8) === text).toBe(true)
    const hash = Buffer.from(await crypto.subtle.digest('SHA-256', bytes)).toString('hex')
    expect(raw.sha256()).toBe(hash)
  }
})

test('where all was read before, there is one window', async () => {
  const begun = new TextEncoder().encode('1\n2\n3')
  const windows = []
  for await (const { from, to, last } of wholeLines({ source: memorySource(begun), begun, lineEnd: 10, ended: true })) {
    windows.push([from, to, last])
  }
  expect(windows).toEqual([[0, 5, true]])
})

test('bytes taken before come first', async () => {
  const source = memorySource(Uint8Array.of(4, 5))
  const all = await wholeOf(withBegun(Uint8Array.of(1, 2, 3), source), 100)
  expect([...(all ?? [])]).toEqual([1, 2, 3, 4, 5])
})

test('more than may be held is not held', async () => {
  expect(await wholeOf(memorySource(new Uint8Array(101)), 100)).toBeUndefined()
  expect((await wholeOf(memorySource(new Uint8Array(100)), 100))?.length).toBe(100)
})
