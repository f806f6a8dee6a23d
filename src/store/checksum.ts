import { createHash } from 'node:crypto'
import type { Sha256 } from '../core/terms/index.ts'

/** SHA-256 of bytes, or of a text in UTF-8. */
export const checksum = (content: Uint8Array | string): Sha256 => createHash('sha256').update(content).digest('hex')
