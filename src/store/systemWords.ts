import type { Place, Problem } from '../core/terms/index.ts'
import { type StoreProblemKind, storeProblem } from './storeProblem.ts'

const words = {
  labBusy: {
    what: 'Another process has been writing to this lab for too long.',
    mend: 'Wait until it is done, or end it, then try again; nothing was changed.',
  },
  labReadOnly: {
    what: 'This lab may only be read here.',
    mend: 'Get the right to write to it, or copy it to a place of your own with a backup.',
  },
  labDamaged: {
    what: 'The database of this lab is damaged.',
    mend: 'Restore the lab from its latest backup into a new place; leave this one as it is.',
  },
  labUnreachable: {
    what: 'The database does not answer, or the connection to it broke.',
    mend: 'See that its server runs, then do the same again: what was kept already is recognised.',
  },
  labRefused: {
    what: 'The database does not let us in.',
    mend: 'Check the address: user, password, and that the database has been made.',
  },
  diskFull: {
    what: 'The disk is full; nothing of this was kept.',
    mend: 'Make room, then do the same again.',
  },
} as const

type Known = keyof typeof words

/** Result codes of SQLite, https://sqlite.org/rescode.html; extended codes carry the plain one in their low byte. */
const sqliteKinds: Readonly<Record<number, Known>> = {
  3: 'labReadOnly', // PERM
  5: 'labBusy', // BUSY
  6: 'labBusy', // LOCKED
  8: 'labReadOnly', // READONLY
  11: 'labDamaged', // CORRUPT
  13: 'diskFull', // FULL
  23: 'labReadOnly', // AUTH
  26: 'labDamaged', // NOTADB
}

/** IOERR and CANTOPEN: the system said no, and SQLite does not say why. */
const sqliteOther = new Set([10, 14])

/** SQLSTATE codes or classes of PostgreSQL, appendix A of its manual. */
const postgresKinds: readonly (readonly [RegExp, Known])[] = [
  [/^(55P03|40001|40P01|57014)$/, 'labBusy'],
  [/^(53100)$/, 'diskFull'],
  [/^(25006|42501)$/, 'labReadOnly'],
  [/^(08...|57P0[1-5]|53300)$/, 'labUnreachable'],
  [/^(28...|3D000|3F000)$/, 'labRefused'],
  [/^(XX00[12])$/, 'labDamaged'],
]

const fileKinds: Readonly<Record<string, Known>> = {
  ENOSPC: 'diskFull',
  EDQUOT: 'diskFull',
  EROFS: 'labReadOnly',
  EACCES: 'labReadOnly',
  EPERM: 'labReadOnly',
}

const netCodes = new Set(['ECONNREFUSED', 'ECONNRESET', 'ENOTFOUND', 'EAI_AGAIN', 'ETIMEDOUT', 'EHOSTUNREACH', 'EPIPE'])

/** What the database or the operating system refused, as a problem; undefined where the error is a mistake of ours. */
export function problemOfSystem(error: unknown, place: Place): Problem | undefined {
  if (!(error instanceof Error)) return undefined
  const code = 'code' in error ? String(error.code) : ''
  if (code === 'ERR_SQLITE_ERROR') return sqliteProblem(error, place)
  if ('severity' in error) return known(postgresKinds.find(([pattern]) => pattern.test(code))?.[1], place)
  if (netCodes.has(code) || /^(Connection terminated|timeout e)/.test(error.message)) {
    return known('labUnreachable', place) // pg gives some of these without a code
  }
  if (/^E[A-Z0-9]+$/.test(code)) {
    const at = 'path' in error && typeof error.path === 'string' ? { file: error.path } : place
    return known(fileKinds[code], at) ?? systemRefused(code, at)
  }
  return undefined
}

function sqliteProblem(error: Error, place: Place): Problem | undefined {
  const plain = 'errcode' in error ? Number(error.errcode) & 0xff : 0
  return sqliteOther.has(plain) ? systemRefused(error.message, place) : known(sqliteKinds[plain], place)
}

const known = (kind: Known | undefined, place: Place): Problem | undefined =>
  kind === undefined ? undefined : storeProblem(kind, { place, ...words[kind] })

function systemRefused(said: string, place: Place): Problem {
  const kind: StoreProblemKind = 'systemRefused'
  const mend = 'Check the disk and the rights, or ask whoever looks after this computer.'
  return storeProblem(kind, { place, what: `The system refused (${said}).`, mend })
}
