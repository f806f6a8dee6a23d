import { reduceDefaults } from '../core/reduce/index.ts'
import { done, failed, type Outcome, type Point, type Problem, type Setup, schemaVersion } from '../core/terms/index.ts'
import type { ReducedRecord } from './reducedRecord.ts'
import type { ResultDocument } from './resultDocument.ts'

/**
 * A reduced record out of the text that `resultText` wrote, with the setup that it was made with. What JSON cannot say
 * comes back as NaN where a number is due; an infinite number of degrees of freedom as null, which counts as infinite.
 */
export function readResult(text: string, setup: Setup): Outcome<ReducedRecord> {
  const document = documentOf(text)
  if (document === undefined) return failed(notAResult)
  const { record, origin, points, curve, zeroes, budget, remarks, steps, window } = document
  const { ripple, noiseCorrelation, sampleInterval, segmentation } = document
  const { file, ...read } = record
  const options = { ...reduceDefaults, ...chosen(origin.options) }
  return done({
    file,
    read,
    setup: { ...setup, options },
    options,
    reduction: {
      ...{ steps, window, ripple, segmentation },
      points: points.map(withNumbers),
      forceZero: zeroes.axialForce,
      torqueBlank: zeroes.torque,
      noiseCorrelation: noiseCorrelation ?? Number.NaN,
      sampleInterval: sampleInterval ?? Number.NaN,
      remarks,
    },
    curve,
    budget,
    remarks,
    origin,
  })
}

/** Texts are kept under their checksum, so the version alone says that one of ours wrote it. */
function documentOf(text: string): ResultDocument | undefined {
  try {
    const document = JSON.parse(text)
    return document?.schemaVersion === schemaVersion ? document : undefined
  } catch {
    return undefined
  }
}

/** Options of the reduction among all that an origin names. */
const chosen = (options: Readonly<Record<string, unknown>>): object =>
  Object.fromEntries(Object.entries(options).filter(([name]) => Object.hasOwn(reduceDefaults, name)))

const always = ['slidingSpeed', 'turns', 'duration', 'torque', 'axialForce'] as const satisfies (keyof Point)[]

const withNumbers = (point: Point): Point => ({
  ...point,
  ...Object.fromEntries(always.map((name) => [name, point[name] ?? Number.NaN])),
})

const notAResult: Problem = {
  kind: 'resultUnreadable',
  class: 'badInput',
  place: {},
  what: 'This is not a result that this version of the program can read.',
  mend: 'Use a newer version of the program, or reduce the record again.',
}
