import { basename } from 'node:path'
import { failed, type Outcome } from '../../core/terms/index.ts'
import { type ByteSource, fileSource, memorySource, withBegun } from './byteSource.ts'
import { contentKind } from './contentKind.ts'
import { sniffEncoding } from './encoding.ts'
import { type TableProblem, tableProblem } from './problems.ts'
import type { RawRecord } from './rawRecord.ts'
import type { ReadOptions } from './readOptions.ts'
import { textRecord, type UnsignedRecord } from './textRecord.ts'
import { utf16Source } from './utf16Source.ts'

/** Enough to tell what a file is and how its text is encoded. */
const firstLook = 1 << 16

/**
 * Reads a record from a file or from bytes: text of any dialect, `.xlsx` or Parquet, told by content and not by name.
 * Gives the channels in SI with the reason for every guess, or all problems at once with their places.
 */
export async function readRecord(source: string | Uint8Array, options: ReadOptions = {}): Promise<Outcome<RawRecord>> {
  const asked: ReadOptions = {
    ...mappingOptions(options),
    file: options.file ?? (typeof source === 'string' ? basename(source) : undefined),
  }
  let bytes: ByteSource
  try {
    bytes = typeof source === 'string' ? await fileSource(source) : memorySource(source)
  } catch (error) {
    return failed(unreadable(error, asked.file))
  }
  try {
    const record = await readBytes(bytes, source, asked)
    return record.ok ? { ok: true, value: { ...record.value, sha256: bytes.sha256() } } : record
  } catch (error) {
    // What the system says while reading; a mistake of ours has no such code.
    if (error instanceof Error && 'syscall' in error) return failed(unreadable(error, asked.file))
    throw error
  } finally {
    await bytes.close()
  }
}

/** What is said for this file goes before what was kept. */
function mappingOptions(options: ReadOptions): ReadOptions {
  const { mapping } = options
  return {
    ...options,
    separator: options.separator ?? mapping?.separator,
    decimalMark: options.decimalMark ?? mapping?.decimalMark,
    encoding: options.encoding ?? mapping?.encoding,
    sheet: options.sheet ?? mapping?.sheet,
  }
}

async function readBytes(
  bytes: ByteSource,
  source: string | Uint8Array,
  options: ReadOptions,
): Promise<Outcome<UnsignedRecord>> {
  const buffer = new Uint8Array(firstLook)
  const begin = buffer.subarray(0, await bytes.read(buffer, 0))
  const content = contentKind(begin)
  switch (content.kind) {
    case 'empty':
      return failed(
        tableProblem('fileEmpty', {
          what: 'The file is empty (0 bytes).',
          mend: 'Export or copy the record again.',
          place: { file: options.file },
        }),
      )
    case 'foreign':
      return failed(
        tableProblem('notATable', {
          what: `This is no table: it looks like ${content.looksLike}.`,
          mend: content.mend,
          place: { file: options.file, line: 1 },
        }),
      )
    case 'xlsx':
      return (await import('./xlsxRecord.ts')).xlsxRecord(withBegun(begin, bytes), options)
    case 'parquet':
      return (await import('./parquetRecord.ts')).parquetRecord(withBegun(begin, bytes), source, options)
    case 'text':
      return readText(begin, bytes, options)
  }
}

function readText(begin: Uint8Array, bytes: ByteSource, options: ReadOptions): Promise<Outcome<UnsignedRecord>> {
  const found = sniffEncoding(begin)
  const encoding = options.encoding ?? found.encoding
  const wide = encoding === 'utf-16le' || encoding === 'utf-16be'
  const all = withBegun(begin.subarray(encoding === found.encoding ? found.mark : 0), bytes)
  return textRecord(wide ? utf16Source(all, encoding) : all, { format: 'text', encoding }, options)
}

function unreadable(error: unknown, file: string | undefined): TableProblem {
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  const said = reasons[code] ?? {
    what: `cannot be read (${code || String(error)})`,
    mend: 'Look whether the file is whole.',
  }
  return tableProblem('fileUnreadable', { what: `The file ${said.what}.`, mend: said.mend, place: { file } })
}

const reasons: Readonly<Record<string, { readonly what: string; readonly mend: string }>> = {
  ENOENT: { what: 'does not exist', mend: 'Look at the spelling of the path.' },
  EISDIR: { what: 'is a folder', mend: 'Name one file in it.' },
  ENOSPC: {
    what: 'is too long for the room left in the folder for temporary files',
    mend: 'Make room there, or name another folder in TMPDIR.',
  },
  EACCES: { what: 'may not be read by you', mend: 'Change its permissions, or copy it.' },
}
