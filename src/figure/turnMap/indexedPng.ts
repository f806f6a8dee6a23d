/** An image of at most 256 colours. */
export interface IndexedImage {
  readonly width: number
  readonly height: number
  /** One palette index a pixel, row after row. */
  readonly pixels: Uint8Array
  /** Three bytes a colour. Colour 0 is left transparent. */
  readonly colours: Uint8Array
}

/**
 * The image as the text of a PNG data address. Seventy thousand cells as elements of their own would make a figure of
 * megabytes; as an image they stay small, sharp and quick. The pixels are stored, not deflated: the bytes then depend on nothing but the cells.
 * PNG third edition (W3C 2025), 5 and 11; zlib RFC 1950; stored blocks RFC 1951, 3.2.4; base64 RFC 4648, 4.
 */
export function indexedPng(image: IndexedImage): string {
  const { width, height, pixels, colours } = image
  if (pixels.length !== width * height)
    throw new RangeError(`pixels must be ${width} × ${height}, got ${pixels.length}`)
  const header = [...fourBytes(width), ...fourBytes(height), 8, 3, 0, 0, 0]
  const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]
  const parts = [
    Uint8Array.from(signature),
    chunk('IHDR', Uint8Array.from(header)),
    chunk('PLTE', colours),
    chunk('tRNS', Uint8Array.of(0)),
    chunk('IDAT', stored(unfiltered(image))),
    chunk('IEND', new Uint8Array(0)),
  ]
  return `data:image/png;base64,${base64(joined(parts))}`
}

/** Every row begins with the number of its filter: 0, none. */
function unfiltered({ width, height, pixels }: IndexedImage): Uint8Array {
  const bytes = new Uint8Array(height * (width + 1))
  for (let row = 0; row < height; row++) {
    bytes.set(pixels.subarray(row * width, (row + 1) * width), row * (width + 1) + 1)
  }
  return bytes
}

const largestBlock = 65_535

function stored(bytes: Uint8Array): Uint8Array {
  const parts: Uint8Array[] = [Uint8Array.of(0x78, 0x01)]
  for (let from = 0; from < bytes.length || from === 0; from += largestBlock) {
    const block = bytes.subarray(from, from + largestBlock)
    const last = from + largestBlock >= bytes.length ? 1 : 0
    const size = block.length
    parts.push(Uint8Array.of(last, size & 255, size >> 8, ~size & 255, (~size >> 8) & 255), block)
  }
  return joined([...parts, Uint8Array.from(fourBytes(adler32(bytes)))])
}

function chunk(name: string, data: Uint8Array): Uint8Array {
  const body = joined([Uint8Array.from(name, (letter) => letter.charCodeAt(0)), data])
  return joined([Uint8Array.from(fourBytes(data.length)), body, Uint8Array.from(fourBytes(crc32(body)))])
}

const fourBytes = (value: number): readonly number[] => [24, 16, 8, 0].map((shift) => (value >>> shift) & 255)

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}

const crcTable = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1
  return value
})

function crc32(bytes: Uint8Array): number {
  let value = 0xffffffff
  for (const byte of bytes) value = crcTable[(value ^ byte) & 255] ^ (value >>> 8)
  return (value ^ 0xffffffff) >>> 0
}

function adler32(bytes: Uint8Array): number {
  let low = 1
  let high = 0
  for (const byte of bytes) {
    low = (low + byte) % 65_521
    high = (high + low) % 65_521
  }
  return ((high << 16) | low) >>> 0
}

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'

/** Two letters for every twelve bits, so that three bytes are two look-ups. */
const pairs: readonly string[] = Array.from({ length: 4096 }, (_, bits) => letters[bits >> 6] + letters[bits & 63])

function base64(bytes: Uint8Array): string {
  let text = ''
  const whole = bytes.length - (bytes.length % 3)
  for (let at = 0; at < whole; at += 3) {
    const bits = (bytes[at] << 16) | (bytes[at + 1] << 8) | bytes[at + 2]
    text += pairs[bits >> 12] + pairs[bits & 4095]
  }
  if (bytes.length - whole === 1) return `${text}${pairs[bytes[whole] << 4]}==`
  if (bytes.length - whole === 2) {
    const bits = (bytes[whole] << 16) | (bytes[whole + 1] << 8)
    return `${text}${pairs[bits >> 12]}${letters[(bits >> 6) & 63]}=`
  }
  return text
}
