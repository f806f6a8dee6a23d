import { done, failed, type Outcome } from '../../core/terms/index.ts'
import type { Change, Lab } from '../../store/index.ts'
import { identifierFrom } from './identifierFrom.ts'

/** Study and sample of a record as people name them. */
export interface Names {
  readonly study?: string
  readonly sample?: string
}

/** The same by their ids. A name may be an id, or a title that gives one: "Drawer runners" is drawer-runners. */
export function idsOf({ study, sample }: Names): Outcome<Names> {
  const ids: { study?: string; sample?: string } = {}
  for (const [kind, name] of [
    ['study', study],
    ['sample', sample],
  ] as const) {
    if (name === undefined) continue
    const id = identifierFrom(name)
    if (id === '') return failed(noName(kind, name))
    ids[kind] = id
  }
  return done(ids)
}

/** Makes the study and the sample that the lab does not know yet, called as people said. */
export async function makeNamed(lab: Lab, names: Names, change: Change): Promise<Outcome<null>> {
  for (const [kind, title] of [
    ['studies', names.study],
    ['samples', names.sample],
  ] as const) {
    if (title === undefined) continue
    const id = identifierFrom(title)
    if ((await lab[kind].get(id)).ok) continue
    const added = await lab[kind].add({ id, title }, change)
    if (!added.ok && added.problems[0]?.kind !== 'alreadyThere') return added // another process was faster
  }
  return done(null)
}

const noName = (kind: string, name: string) => ({
  kind: 'nameUnusable',
  class: 'wrongUse' as const,
  place: { name: kind, cell: name },
  what: `"${name}" holds no letter or digit that an id could be made of.`,
  mend: `Give the ${kind} a name with letters from a to z or digits.`,
})
