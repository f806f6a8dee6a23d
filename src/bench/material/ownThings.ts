import type { OwnThings } from '../../core/plan/index.ts'
import { done, failed, type Outcome, type Outside, type Problem } from '../../core/terms/index.ts'
import { inLab } from '../lab/inLab.ts'
import type { LabCall } from '../lab/labCall.ts'
import { ownOfContent } from './ownContent.ts'
import { type OwnThing, ownThing } from './ownThing.ts'

/** Where own bodies and liquids are looked for. */
export interface OwnPlaces {
  /** Files of bodies and liquids; they go before those of the lab. */
  readonly files: readonly string[]
  /** undefined where no lab is asked. */
  readonly lab: LabCall | undefined
}

/** All own bodies and liquids of some files and a lab. */
export async function ownThings({ files, lab }: OwnPlaces, outside: Outside): Promise<Outcome<OwnThings>> {
  const things: OwnThing[] = []
  const problems: Problem[] = []
  for (const file of files) {
    const thing = ownThing(file)
    if (thing.ok) things.push(thing.value)
    else problems.push(...thing.problems)
  }
  if (problems.length > 0) return failed(...problems)
  const kept = lab === undefined ? done([]) : await keptThings(lab, outside)
  return kept.ok ? done(sorted([...things, ...kept.value])) : kept
}

/** Those that a lab keeps, in order of their names. */
const keptThings = (call: LabCall, outside: Outside): Promise<Outcome<readonly OwnThing[]>> =>
  inLab(call, outside, async (lab) => {
    const papers = await lab.papersOf('lab', 'lab')
    if (!papers.ok) return papers
    return done(papers.value.flatMap(({ kind, content }) => ownOfContent(kind, content) ?? []))
  })

/** Of two with one name the first is taken, as a file goes before the lab. */
function sorted(things: readonly OwnThing[]): OwnThings {
  const materials = things.flatMap((thing) => (thing.kind === 'material' ? [thing.material] : []))
  const liquids = things.flatMap((thing) => (thing.kind === 'liquid' ? [thing.liquid] : []))
  const first = <T extends { readonly name: string }>(all: readonly T[]): readonly T[] =>
    all.filter(({ name }, i) => all.findIndex((other) => other.name === name) === i)
  return { materials: first(materials), liquids: first(liquids) }
}
