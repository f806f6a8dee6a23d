import { type OwnMaterial, withOwnMaterials } from '../../core/material/index.ts'
import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'
import type { Gathered } from '../setup/gathered.ts'
import { yamlSource } from '../setup/yamlSource.ts'
import { readSections } from '../virtualRun/readRunSections.ts'
import { RunValues } from '../virtualRun/runValues.ts'
import { assembleBody } from './assembleBody.ts'
import { assembleLiquid, type WrittenLiquid } from './assembleLiquid.ts'
import { ownKeys } from './ownKeys.ts'

/** A body or a liquid as its file tells it. */
export type WrittenThing =
  | { readonly kind: 'material'; readonly material: OwnMaterial }
  | { readonly kind: 'liquid'; readonly liquid: WrittenLiquid }

/** Reads a body or a liquid of one's own from YAML with units. All problems at once, each with its line; never throws on bad input. */
export function readOwnThing(text: string, fileName: string): Outcome<WrittenThing> {
  const source = yamlSource(text.replace(/^\uFEFF/, ''), fileName)
  if (!source.ok) return source
  const gathered: Gathered = { values: new Map(), problems: [], columns: {} }
  readSections(
    source.value.root,
    { source: source.value, into: gathered, path: '' },
    {
      keys: ownKeys,
      called: 'a file of an own body or liquid',
      withoutColumns: 'Write "body:" or "liquid:" and its keys below it, indented.',
    },
  )
  const values = new RunValues(gathered)
  const place = (path: string) => ({ file: fileName, name: path, ...values.place(path) })
  const problem = (path: string, what: string, mend: string): Problem => ({
    kind: 'ownThingUnusable',
    class: 'badInput',
    place: place(path),
    what,
    mend,
  })
  const kinds = ['body', 'liquid'].filter((kind) => values.has(kind))
  if (gathered.problems.length === 0 && kinds.length !== 1) {
    const what =
      kinds.length === 0 ? 'The file holds neither a body nor a liquid.' : 'The file holds a body and a liquid.'
    gathered.problems.push(problem('body', what, 'Write one of them; give each a file of its own.'))
  }
  if (gathered.problems.length > 0) return failed(...gathered.problems.sort(byLine))
  if (kinds[0] === 'liquid') {
    const { liquid, faults } = assembleLiquid(values)
    if (faults.length > 0) return failed(...faults.map(({ path, what, mend }) => problem(path, what, mend)))
    return done({ kind: 'liquid', liquid })
  }
  const crossed = spansCrossed(values).map((path) =>
    problem(
      path,
      `${path} does not lie between its low and its high end.`,
      'Give low ≤ value ≤ high, or leave the ends out.',
    ),
  )
  if (crossed.length > 0) return failed(...crossed)
  const material = assembleBody(values)
  const whole = withOwnMaterials([material])
  if (!whole.ok) return failed(...whole.problems.map((one) => ({ ...one, place: { ...place('body'), ...one.place } })))
  return done({ kind: 'material', material })
}

const measured = [
  ...['elasticModulus', 'poissonRatio', 'density', 'strength', 'hardness'],
  ...['conductivity', 'heatCapacity', 'roughness'],
]

/** Paths of values that lie outside their own span. */
const spansCrossed = (values: RunValues): readonly string[] =>
  measured
    .map((key) => `body.${key}`)
    .filter((path) => {
      const value = values.maybe(`${path}.value`)
      if (value === undefined) return false
      return !(values.number(`${path}.low`, value) <= value && value <= values.number(`${path}.high`, value))
    })

const byLine = (a: Problem, b: Problem): number => (a.place.line ?? 0) - (b.place.line ?? 0)
