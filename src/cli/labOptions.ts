import type { Command } from 'commander'
import type { LabCall } from '../bench/lab/index.ts'
import { done, failed, type Outcome } from '../core/terms/index.ts'
import type { Desk } from './verb.ts'

/** Options of every verb that works on a lab. */
export interface LabOptions {
  readonly lab?: string
  readonly by?: string
  readonly why?: string
  readonly json?: true
}

/** The lab's place, for verbs that only look. */
export const addLabOption = (command: Command): Command =>
  command.option('-l, --lab <place>', 'the lab: a folder or postgres:// address; else KUFE_LAB, else ./kufe-lab')

/** Who and why, for verbs that change something. */
export const addChangeOptions = (command: Command): Command =>
  command
    .option('--by <initials>', 'who does this; else KUFE_BY, else the name that you are logged in by')
    .option('--why <words>', 'why, for the history')

/** The call of a verb that only looks: nobody need be named. */
export const lookingCall = ({ lab }: LabOptions, desk: Desk): Promise<Outcome<LabCall>> =>
  labCall(lab, { who: whoIs(desk, undefined) ?? 'somebody who looked', why: '' }, desk)

/** The call of a verb that changes something. */
export async function changingCall({ lab, by, why = '' }: LabOptions, desk: Desk): Promise<Outcome<LabCall>> {
  const who = whoIs(desk, by)
  return who === undefined ? failed(nobody) : labCall(lab, { who, why }, desk)
}

async function labCall(
  named: string | undefined,
  hand: Pick<LabCall, 'who' | 'why'>,
  { environment }: Desk,
): Promise<Outcome<LabCall>> {
  const { findLab } = await import('../bench/lab/index.ts')
  const place = findLab(named, environment.KUFE_LAB)
  return place.ok ? done({ place: place.value, ...hand }) : place
}

/** Whoever was named, else whom the environment names. */
export function whoIs({ environment }: Desk, by: string | undefined): string | undefined {
  const { KUFE_BY, USER, LOGNAME, USERNAME } = environment
  return [by, KUFE_BY, USER, LOGNAME, USERNAME].map((name) => name?.trim()).find((name) => name)
}

export const nobody = {
  kind: 'nobodyNamed',
  class: 'wrongUse' as const,
  place: {},
  what: 'The history needs to know who does this.',
  mend: 'Say it with --by INITIALS, or for good with KUFE_BY.',
}
