import { basename, resolve } from 'node:path'
import { done, type Outcome, type Outside } from '../../core/terms/index.ts'
import { newLab } from '../../store/index.ts'
import { identifierFrom } from './identifierFrom.ts'
import { changeNow, type LabCall } from './labCall.ts'

/** A lab that has just been made. */
export interface MadeLab {
  /** Folder or address, without a password. */
  readonly where: string
  readonly id: string
  readonly title: string
}

/** Makes a lab in an empty or new folder, or in an empty database. Without a title it is called after its place. */
export async function makeLab(call: LabCall, title: string | undefined, outside: Outside): Promise<Outcome<MadeLab>> {
  const name = title ?? nameOf(call.place)
  const about = { id: identifierFrom(name) || 'lab', title: name }
  const made = await newLab(call.place, about, { change: changeNow(call, outside), program: outside.program })
  if (!made.ok) return made
  await using lab = made.value
  return done({ where: lab.where, ...about })
}

const nameOf = (place: string): string =>
  URL.canParse(place) ? new URL(place).pathname.slice(1) || 'lab' : basename(resolve(place))
