import { createHash } from 'node:crypto'
import type { Sha256 } from '../../core/terms/index.ts'
import type { Bytes } from './byteStore.ts'

/** Passes all pieces on and gives their checksum and length. */
export async function passPieces(
  bytes: Bytes,
  onPiece: (piece: Uint8Array) => void | Promise<void>,
): Promise<{ sha256: Sha256; size: number }> {
  const hash = createHash('sha256')
  let size = 0
  for await (const piece of bytes instanceof Uint8Array ? [bytes] : bytes) {
    hash.update(piece)
    size += piece.length
    await onPiece(piece)
  }
  return { sha256: hash.digest('hex'), size }
}

/** All pieces as one plain array: a Buffer's methods differ from those of its kind. */
export async function joinPieces(bytes: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const pieces: Uint8Array[] = []
  for await (const piece of bytes) pieces.push(piece)
  const { buffer, byteOffset, byteLength } = pieces.length === 1 ? pieces[0] : Buffer.concat(pieces)
  return new Uint8Array(buffer, byteOffset, byteLength)
}
