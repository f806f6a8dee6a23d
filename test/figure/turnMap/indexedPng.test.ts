import { crc32, inflateSync } from 'node:zlib'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { indexedPng } from '../../../src/figure/turnMap/indexedPng.ts'

/** Chunks of a PNG, their checksums looked at with zlib's own (PNG third edition, 5.3). */
function chunksOf(address: string): Map<string, Buffer> {
  const bytes = Buffer.from(address.replace('data:image/png;base64,', ''), 'base64')
  expect([...bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10])
  const chunks = new Map<string, Buffer>()
  for (let at = 8; at < bytes.length; ) {
    const size = bytes.readUInt32BE(at)
    const body = bytes.subarray(at + 4, at + 8 + size)
    expect(bytes.readUInt32BE(at + 8 + size)).toBe(crc32(body))
    chunks.set(body.toString('latin1', 0, 4), body.subarray(4))
    at += 12 + size
  }
  return chunks
}

const image = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 })).chain(([width, height]) =>
  fc.record({
    width: fc.constant(width),
    height: fc.constant(height),
    pixels: fc.uint8Array({ minLength: width * height, maxLength: width * height }),
  }),
)
const colours = Uint8Array.from({ length: 768 }, (_, index) => index % 251)

test('another decoder reads back size, colours and every pixel', () => {
  fc.assert(
    fc.property(image, ({ width, height, pixels }) => {
      const chunks = chunksOf(indexedPng({ width, height, pixels, colours }))
      expect([...chunks.keys()]).toEqual(['IHDR', 'PLTE', 'tRNS', 'IDAT', 'IEND'])
      const header = chunks.get('IHDR')
      expect([header?.readUInt32BE(0), header?.readUInt32BE(4), ...(header?.subarray(8) ?? [])]).toEqual([
        width,
        height,
        8,
        3,
        0,
        0,
        0,
      ])
      expect([...(chunks.get('PLTE') ?? [])]).toEqual([...colours])
      const rows = inflateSync(chunks.get('IDAT') ?? Buffer.alloc(0))
      for (let row = 0; row < height; row++) {
        const line = rows.subarray(row * (width + 1), (row + 1) * (width + 1))
        expect([...line]).toEqual([0, ...pixels.subarray(row * width, (row + 1) * width)])
      }
    }),
    { numRuns: 50 },
  )
})

test('more pixels than one stored block holds', () => {
  const pixels = Uint8Array.from({ length: 360 * 200 }, (_, index) => (index * 7) % 256)
  const rows = inflateSync(
    chunksOf(indexedPng({ width: 360, height: 200, pixels, colours })).get('IDAT') ?? Buffer.alloc(0),
  )
  expect(rows).toHaveLength(361 * 200)
  expect(rows[361 * 199 + 360]).toBe(pixels[360 * 200 - 1])
})

test('refuses pixels that do not fill the image', () => {
  expect(() => indexedPng({ width: 3, height: 2, pixels: new Uint8Array(5), colours })).toThrow(
    'pixels must be 3 × 2, got 5',
  )
})
