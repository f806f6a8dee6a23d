import { randomBytes } from 'node:crypto'
import { mkdir, open, readdir, readFile, rename, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { nearestWord } from '../../core/quantity/index.ts'
import { channelNames, done, failed, type Outcome } from '../../core/terms/index.ts'
import type { ColumnAnswer, ColumnAnswers } from './answers.ts'
import { encodings } from './encoding.ts'
import { shown, type TableProblem, tableProblem } from './problems.ts'
import type { NamedMapping } from './readOptions.ts'

/** Letters and digits first, then also blanks and . _ - : a name can never lead to another folder. */
const goodName = /^[\p{L}\p{N}](?:[\p{L}\p{N} ._-]{0,62}[\p{L}\p{N}_-])?$/u
const mostBytes = 1 << 20

/** Keeps a mapping as a small JSON file in `folder`, which is made if need be. Whole or not at all: readers never see half. */
export async function keepMapping(folder: string, mapping: NamedMapping): Promise<Outcome<string>> {
  if (!goodName.test(mapping.name)) return failed(nameRefused(mapping.name))
  const { name, columns, separator, decimalMark, encoding, sheet } = mapping
  const text = `${JSON.stringify({ name, columns, separator, decimalMark, encoding, sheet }, null, 2)}\n`
  const path = join(folder, `${name}.json`)
  const half = join(folder, `.${randomBytes(8).toString('hex')}.part`)
  try {
    await mkdir(folder, { recursive: true })
    const file = await open(half, 'wx')
    try {
      await file.writeFile(text)
      await file.sync()
    } finally {
      await file.close()
    }
    await rename(half, path)
    return done(path)
  } catch (error) {
    await rm(half, { force: true }).catch(() => {})
    return failed(unreadable(name, { why: reasonOf(error), mend: `Look whether you may write to ${folder}.` }))
  }
}

/** The mapping kept under a name. */
export async function readMapping(folder: string, name: string): Promise<Outcome<NamedMapping>> {
  if (!goodName.test(name)) return failed(nameRefused(name))
  const path = join(folder, `${name}.json`)
  let text: string
  try {
    if ((await stat(path)).size > mostBytes) throw new Error('it is too large')
    text = await readFile(path, 'utf8')
  } catch (error) {
    return failed(unreadable(name, { why: reasonOf(error), mend: await whatThereIs(folder, name) }))
  }
  const mapping = parseMapping(text, name)
  const mend = 'Keep it again with --save-mapping.'
  return mapping === undefined
    ? failed(unreadable(name, { why: 'it does not say what it should', mend }))
    : done(mapping)
}

/** Names of all that is kept in a folder, sorted; none where the folder does not exist. */
export async function keptMappingNames(folder: string): Promise<readonly string[]> {
  const files = await readdir(folder).catch((): string[] => [])
  return files
    .filter((file) => file.endsWith('.json'))
    .map((file) => file.slice(0, -5))
    .filter((name) => goodName.test(name))
    .sort()
}

function parseMapping(text: string, name: string): NamedMapping | undefined {
  let tree: unknown
  try {
    tree = JSON.parse(text)
  } catch {
    return undefined
  }
  if (!isRecord(tree) || !isRecord(tree.columns)) return undefined
  const columns: [string, ColumnAnswer][] = []
  for (const [heading, answer] of Object.entries(tree.columns)) {
    const parsed = parseAnswer(answer)
    if (parsed === undefined) return undefined
    columns.push([heading, parsed])
  }
  const { sheet } = tree
  return {
    name,
    columns: Object.fromEntries(columns) satisfies ColumnAnswers,
    separator: ([',', ';', '\t', '|', ' '] as const).find((mark) => mark === tree.separator),
    decimalMark: (['.', ','] as const).find((mark) => mark === tree.decimalMark),
    encoding: encodings.find((encoding) => encoding === tree.encoding),
    sheet: typeof sheet === 'string' || typeof sheet === 'number' ? sheet : undefined,
  }
}

function parseAnswer(answer: unknown): ColumnAnswer | undefined {
  if (!isRecord(answer)) return undefined
  const { channel, unit } = answer
  const named = channel === null ? null : channelNames.find((name) => name === channel)
  if (channel !== undefined && named === undefined) return undefined
  if (unit !== undefined && typeof unit !== 'string') return undefined
  return { ...(named === undefined ? {} : { channel: named }), ...(unit === undefined ? {} : { unit }) }
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

async function whatThereIs(folder: string, name: string): Promise<string> {
  const names = await keptMappingNames(folder)
  if (names.length === 0) return 'Keep one first with --save-mapping; none is kept so far.'
  const near = nearestWord(name, names)
  return near === undefined ? `Use one of ${names.slice(0, 12).join(', ')}.` : `Did you mean "${near}"?`
}

function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error)
  if ('code' in error && error.code === 'ENOENT') return 'nothing is kept under that name'
  return error.message
}

const unreadable = (name: string, said: { readonly why: string; readonly mend: string }): TableProblem =>
  tableProblem('mappingUnreadable', {
    class: 'wrongUse',
    what: `The mapping "${shown(name)}" cannot be used: ${shown(said.why)}.`,
    mend: said.mend,
    place: { name: shown(name) },
  })

const nameRefused = (name: string): TableProblem =>
  tableProblem('mappingNameRefused', {
    class: 'wrongUse',
    what: `"${shown(name)}" cannot be the name of a mapping.`,
    mend: 'Use up to 64 letters and digits, with blanks, points, _ and - between them.',
    place: { name: shown(name) },
  })
