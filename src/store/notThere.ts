import { refuse } from './storeProblem.ts'

/** Gives up because the lab has nothing of this id. */
export const notThere = (kind: string, id: string): never =>
  refuse('notThere', {
    place: { name: `${kind} id`, cell: id },
    what: `This lab has no ${kind} "${id}".`,
    mend: `List what there is, or add the ${kind} first.`,
  })

/** Refuses a correction of something that somebody else corrected since its author looked. */
export function checkSeen(what: string, latest: number, seen: number): void {
  if (latest === seen) return
  refuse('changedMeanwhile', {
    place: { name: what },
    what: `Version ${latest} of ${what} is the latest, not version ${seen}.`,
    mend: 'Look at the latest version, then correct that one.',
  })
}
