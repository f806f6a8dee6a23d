import type { Command } from 'commander'
import type { OwnPlaces } from '../bench/material/index.ts'
import { done, type Outcome } from '../core/terms/index.ts'
import { type LabOptions, lookingCall } from './labOptions.ts'
import type { Desk } from './verb.ts'

const more = (file: string, before: readonly string[]): readonly string[] => [...before, file]

/** Files of own bodies and liquids. */
export const addOwnOption = (command: Command): Command =>
  command.option('--own <file>', 'a body or liquid of your own (YAML); may be repeated', more, [])

/** Files that were named, and the lab where one is named or lies here. */
export async function ownPlaces(
  { own, ...options }: LabOptions & { readonly own: readonly string[] },
  desk: Desk,
): Promise<Outcome<OwnPlaces>> {
  const call = await lookingCall(options, desk)
  if (call.ok) return done({ files: own, lab: call.value })
  return options.lab === undefined ? done({ files: own, lab: undefined }) : call
}
