import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  statSync,
} from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { syncFolder, writeDurably } from '../bytes/durableFile.ts'
import { refuse } from '../storeProblem.ts'

/** Layout of the folder; the database has a version of its own. */
const folderFormat = 1

/** Where everything of a folder lab lies. */
export interface LabFolder {
  readonly folder: string
  readonly label: string
  readonly database: string
  readonly raw: string
  readonly columns: string
  readonly backups: string
  /** A file that is there from the first moment of the making to the last. */
  readonly marker: string
}

export function labFolder(path: string): LabFolder {
  const folder = resolve(path)
  const at = (name: string): string => join(folder, name)
  return {
    folder,
    label: at('lab.json'),
    database: at('kufe.sqlite'),
    raw: at('raw'),
    columns: at('columns'),
    backups: at('backups'),
    marker: at('unfinished'),
  }
}

/**
 * Makes the folder with its parts, all durable. What a broken-off making left is used again.
 * Refuses a folder in which anything else lies: without our mark it may be what is left of a lab.
 */
export function layFolder(lab: LabFolder): void {
  const { folder, label, database, raw, columns, backups, marker } = lab
  const first = makeFolder(folder)
  const [found] = readdirSync(folder)
  if (found !== undefined && !existsSync(marker)) refuseUsed(lab, found)
  closeSync(openSync(marker, 'a'))
  syncFolder(folder)
  for (let at = folder; at !== dirname(first); at = dirname(at)) syncFolder(dirname(at))
  writeDurably(label, `${JSON.stringify({ kufe: 'lab', format: folderFormat })}\n`)
  for (const part of [raw, columns, backups]) mkdirSync(part, { recursive: true })
  closeSync(openSync(database, 'a'))
  syncFolder(folder)
}

/** Gives the uppermost folder that had to be made, or the folder itself. */
function makeFolder(folder: string): string {
  const first = mkdirSync(dirname(folder), { recursive: true })
  const found = statSync(folder, { throwIfNoEntry: false })
  if (found === undefined) makeOne(folder)
  else if (!found.isDirectory()) {
    const mend = 'Name a folder that is empty or does not exist yet.'
    refuse('folderNotEmpty', { place: { file: folder }, what: 'A file has this name.', mend })
  }
  return first ?? folder
}

/** Alone, the call says why it failed; `recursive` turns a read-only disk into a missing file. Another process may be faster. */
function makeOne(folder: string): void {
  try {
    mkdirSync(folder)
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error
  }
}

function refuseUsed({ folder, label, database }: LabFolder, found: string): never {
  const place = { file: folder }
  if (existsSync(label) || existsSync(database)) {
    const mend = 'Name another place, or open the lab that is there.'
    return refuse('labExists', { place, what: 'There is a lab here already.', mend })
  }
  const what = `Other things lie in this folder already, "${found}" among them.`
  return refuse('folderNotEmpty', { place, what, mend: 'Name a folder that is empty or does not exist yet.' })
}

/** Refuses a folder that is no lab, one of a newer program, and one that lost a part. */
export function checkFolder(lab: LabFolder): void {
  const { folder, label, database, marker } = lab
  if (!existsSync(label) && !existsSync(database) && !existsSync(marker)) {
    refuse('labMissing', {
      place: { file: folder },
      what: 'There is no lab here.',
      mend: 'Check the path, or make a lab with "kufe lab new".',
    })
  }
  for (const part of [database, label]) {
    if (existsSync(part)) continue
    if (existsSync(marker)) refuse('labUnfinished', { place: { file: folder }, what: brokenOff, mend: makeAgain })
    refuse('labDamaged', { place: { file: part }, what: 'The lab lacks this file.', mend: restoreIt })
  }
  const format = formatOf(readFileSync(label, 'utf8'))
  if (format === undefined) {
    refuse('labDamaged', { place: { file: label }, what: 'This is not the label of a lab.', mend: restoreIt })
  }
  if (format > folderFormat) {
    refuse('labNewer', {
      place: { file: label, cell: String(format) },
      what: `A newer program made this lab: its folder has format ${format}, this program knows ${folderFormat}.`,
      mend: 'Update the program; the lab was left as it is.',
    })
  }
}

const brokenOff = 'The making of this lab was broken off.'
const makeAgain = 'Make it again in the same place.'
const restoreIt = 'Put it back from a backup, or restore the whole lab from one.'

function formatOf(text: string): number | undefined {
  try {
    const { kufe, format } = JSON.parse(text)
    return kufe === 'lab' && Number.isInteger(format) && format >= 1 ? format : undefined
  } catch {
    return undefined
  }
}

/** Whether we may change the lab. */
export function mayWrite({ folder, database }: LabFolder): boolean {
  try {
    for (const path of [folder, database]) accessSync(path, constants.W_OK)
    return true
  } catch {
    return false
  }
}
