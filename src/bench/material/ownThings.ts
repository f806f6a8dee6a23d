import { type OwnPaper, type OwnThings, ownFromPapers } from '../../core/plan/index.ts'
import { done, failed, type Outcome, type Outside, type Problem } from '../../core/terms/index.ts'
import { inLab } from '../lab/inLab.ts'
import type { LabCall } from '../lab/labCall.ts'
import { ownContent } from './ownContent.ts'
import { ownThing } from './ownThing.ts'

/** Where own bodies and liquids are looked for. */
export interface OwnPlaces {
  /** Files of bodies and liquids; they go before those of the lab. */
  readonly files: readonly string[]
  /** undefined where no lab is asked. */
  readonly lab: LabCall | undefined
}

/** All own bodies and liquids of some files and a lab. */
export async function ownThings({ files, lab }: OwnPlaces, outside: Outside): Promise<Outcome<OwnThings>> {
  const papers: OwnPaper[] = []
  const problems: Problem[] = []
  for (const file of files) {
    const thing = ownThing(file)
    if (thing.ok) papers.push({ kind: thing.value.kind, content: ownContent(thing.value) })
    else problems.push(...thing.problems)
  }
  if (problems.length > 0) return failed(...problems)
  const kept = lab === undefined ? done([]) : await labPapers(lab, outside)
  if (!kept.ok) return kept
  const { materials, liquids } = ownFromPapers([...papers, ...kept.value])
  return done({ materials: firstOfName(materials), liquids: firstOfName(liquids) })
}

/** What a lab keeps of its own, in order of kinds and names. */
const labPapers = (call: LabCall, outside: Outside): Promise<Outcome<readonly OwnPaper[]>> =>
  inLab(call, outside, (lab) => lab.papersOf('lab', 'lab'))

/** Of two with one name the first is taken, as a file goes before the lab. */
const firstOfName = <T extends { readonly name: string }>(all: readonly T[]): readonly T[] =>
  all.filter(({ name }, i) => all.findIndex((other) => other.name === name) === i)
