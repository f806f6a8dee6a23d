import { accessSync, constants, existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs'
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
  }
}

const ours = /^(?:lab\.json|kufe\.sqlite|raw|columns|backups)(?:-wal|-shm|-journal|\.\d+\.part)?$/

/** Makes the folder with its parts, all durable. Refuses one in which other things lie; what a broken-off attempt left is used again. */
export function layFolder({ folder, raw, columns, backups }: LabFolder): void {
  const first = mkdirSync(folder, { recursive: true })
  const strange = readdirSync(folder).find((name) => !ours.test(name))
  if (strange !== undefined) {
    refuse('folderNotEmpty', {
      place: { file: folder },
      what: `Other things lie in this folder already, "${strange}" among them.`,
      mend: 'Name a folder that is empty or does not exist yet.',
    })
  }
  for (const part of [raw, columns, backups]) mkdirSync(part, { recursive: true })
  syncFolder(folder)
  if (first !== undefined) syncFolder(dirname(first))
}

/** Says what the folder is. */
export const labelFolder = ({ label }: LabFolder): void =>
  writeDurably(label, `${JSON.stringify({ kufe: 'lab', format: folderFormat })}\n`)

/** Refuses a folder that is no lab, one of a newer program, and one that lost a part. */
export function checkFolder(lab: LabFolder): void {
  const { folder, label, database } = lab
  if (!existsSync(label) && !existsSync(database)) {
    refuse('labMissing', {
      place: { file: folder },
      what: 'There is no lab here.',
      mend: 'Check the path, or make a lab with "kufe lab new".',
    })
  }
  for (const part of [database, label]) {
    if (!existsSync(part))
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
