import { done, failed, type Outcome, type Outside, type Problem } from '../../core/terms/index.ts'
import { canonicalJson } from '../../store/index.ts'
import { identifierFrom } from '../lab/identifierFrom.ts'
import { inLab } from '../lab/inLab.ts'
import { changeNow, type LabCall } from '../lab/labCall.ts'
import { ownContent } from './ownContent.ts'
import { type OwnThing, ownThing } from './ownThing.ts'

/** What became of it in the lab. */
export interface KeptThing {
  readonly thing: OwnThing
  /** By which the lab knows it: `birch-plywood`. */
  readonly id: string
  readonly version: number
  readonly isNew: boolean
}

/** Name of a body or a liquid. */
const nameOf = (thing: OwnThing): string => (thing.kind === 'material' ? thing.material.name : thing.liquid.name)

/** Keeps a body or a liquid of a file in the lab; the same once more is no new version, another is one that supersedes. */
export async function keepOwnThing(file: string, call: LabCall, outside: Outside): Promise<Outcome<KeptThing>> {
  const read = ownThing(file)
  if (!read.ok) return read
  const thing = read.value
  const id = identifierFrom(nameOf(thing))
  if (id === '') return failed(noName(file, nameOf(thing)))
  const content = ownContent(thing)
  const place = { subject: 'lab', subjectId: 'lab', kind: thing.kind, name: id } as const
  return inLab(call, outside, async (lab): Promise<Outcome<KeptThing>> => {
    const latest = await lab.paper(place)
    if (!latest.ok) return latest
    const version = latest.value?.version ?? 0
    if (latest.value !== undefined && canonicalJson(latest.value.content) === canonicalJson(content)) {
      return done({ thing, id, version, isNew: false })
    }
    const kept = await lab.keepPaper({ ...place, content, after: version }, changeNow(call, outside))
    if (!kept.ok) return kept
    if (kept.value.end === 'superseded') return failed(meanwhile(id))
    return done({ thing, id, version: kept.value.paper.version, isNew: true })
  })
}

const noName = (file: string, name: string): Problem => ({
  kind: 'nameUnusable',
  class: 'badInput',
  place: { file, name: 'name', cell: name },
  what: `"${name}" holds no letter or digit that an id could be made of.`,
  mend: 'Give it a name with letters from a to z or digits.',
})

const meanwhile = (id: string): Problem => ({
  kind: 'changedMeanwhile',
  class: 'store',
  place: { name: id },
  what: `Somebody else kept another version of ${id} just now.`,
  mend: 'Look at it, then do the same again.',
})
