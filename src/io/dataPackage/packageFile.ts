import { createHash } from 'node:crypto'
import type { Sha256 } from '../../core/terms/index.ts'

/** One file of a package. The path is relative, with forward slashes. */
export interface PackageFile {
  readonly path: string
  readonly bytes: Uint8Array
}

/** What a descriptor says of a file that has been written. */
export interface DescribedFile {
  readonly path: string
  readonly size: number
  readonly sha256: Sha256
  readonly title: string
  readonly mediaType: string
  /** Table Schema, for a CSV. */
  readonly schema?: object
  /** Paths that it was made from. */
  readonly from?: readonly string[]
}

/** A file on its way into the package, with what the descriptors say of it. */
export type NewFile = PackageFile & Omit<DescribedFile, 'path' | 'size' | 'sha256'>

export const sha256Of = (bytes: Uint8Array | string): Sha256 => createHash('sha256').update(bytes).digest('hex')

export const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text)
