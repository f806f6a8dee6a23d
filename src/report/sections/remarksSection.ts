import { printSteps } from '../../core/quantity/index.ts'
import { type Point, type Remark, type RemarkKind, remarkKinds, remarkWords } from '../../core/terms/index.ts'
import { signsOf } from '../../figure/index.ts'
import type { RemarkEntry } from '../reportContent.ts'
import type { ReportInput } from '../reportInput.ts'
import { capital } from '../words/printed.ts'
import { figureNamed } from './figureNamed.ts'
import type { SectionOf } from './sectionOf.ts'

/** Every finding as a sentence with its number and its steps, heaviest first, and what to do next. */
export const remarksSection: SectionOf = (input, numbers) => {
  const remarks = entriesOf(input)
  if (remarks.length === 0) {
    return { heading: 'Remarks', blocks: [{ kind: 'paragraph', text: 'Nothing was found to remark on.' }] }
  }
  return {
    heading: 'Remarks',
    blocks: [...figureNamed('remarks', input, numbers), { kind: 'remarks', remarks }],
  }
}

function entriesOf({ reduction: { points }, remarks }: ReportInput): readonly RemarkEntry[] {
  const signs = signsOf(points)
  const onPoints = signs.map((sign) => entry(sign.kind, sign.letter, onSteps(points, sign.kind)))
  const onRecord = remarkKinds
    .filter((kind) => remarks.some((remark) => remark.kind === kind))
    .map((kind) =>
      entry(
        kind,
        '',
        remarks.filter((remark) => remark.kind === kind),
      ),
    )
  const weights: readonly RemarkEntry['weight'][] = ['stops', 'caution', 'note']
  return weights.flatMap((weight) => [...onPoints, ...onRecord].filter((one) => one.weight === weight))
}

/** Remarks of one kind over the points; a step's number stands in its remark or is its point's. */
const onSteps = (points: readonly Point[], kind: RemarkKind): Remark[] =>
  points.flatMap(({ step, remarks }) =>
    remarks.filter((remark) => remark.kind === kind).map((remark) => ({ step, ...remark })),
  )

function entry(kind: RemarkKind, letter: string, found: readonly Remark[]): RemarkEntry {
  const { words, weight } = remarkWords[kind]
  return {
    weight,
    letter,
    words,
    where: stepsOf(found),
    sentences: once(found.map(({ sentence }) => sentence)).map((sentence, _, all) =>
      all.length === 1 ? sentence : withSteps(sentence, found),
    ),
    next: once(found.map(({ next }) => next)),
  }
}

function withSteps(sentence: string, found: readonly Remark[]): string {
  const steps = stepsOf(found.filter((remark) => remark.sentence === sentence))
  return steps === '' ? sentence : `${capital(steps)}: ${sentence}`
}

function stepsOf(found: readonly Remark[]): string {
  const steps = [...new Set(found.flatMap(({ step }) => step ?? []))].sort((a, b) => a - b)
  return steps.length === 0 ? '' : printSteps(steps)
}

const once = (texts: readonly string[]): string[] => [...new Set(texts)]
