import { failed, type Outcome } from '../../core/terms/index.ts'
import type { Titled } from '../../store/index.ts'
import { identifierFrom } from '../lab/identifierFrom.ts'
import { changeNow } from '../lab/labCall.ts'
import { idsOf } from '../lab/namedThings.ts'
import type { HeldLab } from './heldLab.ts'

/** Makes a study under a name that people chose; the id follows from it, counted up where another study has it. */
export async function makeStudy(
  { lab, outside, call }: HeldLab,
  { name, by }: { readonly name: string; readonly by: string },
): Promise<Outcome<Titled>> {
  const ids = idsOf({ study: name })
  if (!ids.ok) return ids
  const base = identifierFrom(name)
  const change = changeNow({ ...call, who: by, why: '' }, outside)
  for (let count = 1; count < 100; count++) {
    const id = count === 1 ? base : `${base.slice(0, 60)}-${count}`
    const made = await lab.studies.add({ id, title: name.trim() }, change)
    if (made.ok || made.problems[0]?.kind !== 'alreadyThere') return made
  }
  return failed({
    kind: 'alreadyThere',
    class: 'wrongUse',
    place: { name: 'name', cell: name },
    what: 'A hundred studies have this name.',
    mend: 'Say in the name what this one is about.',
  })
}
