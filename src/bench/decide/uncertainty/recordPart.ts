import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { curveThrough } from '../../../core/decide/index.ts'
import type { Distribution } from '../../../core/stats/judging/index.ts'
import { done, failed, type Outcome, type Place, sharedSources, sharedSourceWords } from '../../../core/terms/index.ts'
import { replicatePoints } from '../../compare/replicateOf.ts'
import { fileProblem } from '../../fileProblem.ts'
import type { ResultDocument } from '../../resultDocument.ts'

/** One cause in a friction value: its own noise, or what all points of a setup share. Standard normal; `size` is a share of friction. */
export interface RecordCause {
  /** Equal names are one cause, so that what two numbers share cancels where it should. */
  readonly name: string
  readonly size: number
}

/** Friction of a reduced record at a speed, split into its causes. */
export interface RecordPart {
  readonly friction: number
  readonly causes: readonly RecordCause[]
}

/** A cause goes into both methods as a standard normal. */
export const causeDistribution: Distribution = { is: 'normal', value: 0, standardUncertainty: 1 }

/** Reads friction at a speed from a result that "kufe reduce --json" wrote; its file lies beside the model. */
export function recordPart(
  {
    name,
    file,
    slidingSpeed,
    place,
  }: { readonly name: string; readonly file: string; readonly slidingSpeed: number; readonly place: Place },
  model: string,
): Outcome<RecordPart> {
  const path = join(dirname(model), file)
  let document: Partial<ResultDocument>
  try {
    document = JSON.parse(readFileSync(path, 'utf8'))
  } catch (error) {
    if (!(error instanceof SyntaxError)) return failed(fileProblem(error, path, 'read'))
    document = {}
  }
  const points = Array.isArray(document.points) ? replicatePoints(document.points) : []
  if (points.length === 0) {
    const what = 'This is no result with usable points that "kufe reduce --json" wrote.'
    return failed({
      kind: 'resultUnreadable',
      class: 'badInput',
      place: { ...place, file: path },
      what,
      mend: 'Name such a result.',
    })
  }
  const curve = curveThrough(points)
  if (!(slidingSpeed >= curve.slowest / 1.02 && slidingSpeed <= curve.fastest * 1.02)) {
    const what = `${name}: the record has no usable points around this speed.`
    return failed({
      kind: 'speedNotThere',
      class: 'badInput',
      place,
      what,
      mend: 'Choose a speed between its slowest and its fastest step.',
    })
  }
  const setup = document.origin?.setup ?? path
  const shared = sharedSources.map((source) => ({
    name: `${sharedSourceWords[source]} (${setup.slice(0, 8)})`,
    size: curve.shared(source, slidingSpeed),
  }))
  return done({
    friction: Math.exp(curve.lnFriction(slidingSpeed)),
    causes: [{ name: `own part of ${name}`, size: curve.own(slidingSpeed) }, ...shared].filter(({ size }) => size > 0),
  })
}
