import type { ReportBlock } from '../reportContent.ts'
import type { Numbering } from '../sections/numbering.ts'
import type { DecisionInput } from './decisionInput.ts'

/** The method in words that can be checked, and what it rests on. */
export function howBlocks({ comparison, left }: DecisionInput): ReportBlock[] {
  const { method, scale, ranking, samples } = comparison
  const scaled =
    scale === 'ratio'
      ? 'Friction is compared by its ratio, on the logarithm; a mean of replicates is a geometric one.'
      : 'Friction is compared by its difference.'
  const paragraphs = [
    'The replicate is the unit: a new mounting with fresh surfaces. Its curve goes through its steps, smoothly in the logarithms of speed and friction; all intervals come from the scatter between replicates, which holds the own uncertainty of the steps.',
    `${scaled} ${method}`,
    ...(ranking === null || samples.length < 3 ? [] : [`The ranking is by ${ranking.by}.`]),
    ...(left.length === 0 ? [] : [`Left aside: ${left.map(({ name, why }) => `${name}, as ${why}`).join('; ')}.`]),
  ]
  return paragraphs.map((text) => ({ kind: 'paragraph', text }))
}

/** What went in, by checksums: equal records, setups, program and seed give the same decision. */
export function recordBlocks({ records, program }: DecisionInput, numbers: Numbering): ReportBlock[] {
  return [
    numbers.table({
      caption: 'Records with the beginnings of the SHA-256 of their bytes and of their setup.',
      columns: [
        { head: 'sample', unit: '', align: 'left' },
        { head: 'replicate', unit: '', align: 'right' },
        { head: 'record', unit: '', align: 'left' },
        { head: 'bytes', unit: '', align: 'left' },
        { head: 'setup', unit: '', align: 'left' },
      ],
      rows: records.map(({ sample, replicate, name, raw, setup }) => [
        sample,
        replicate === null ? '–' : String(replicate),
        name,
        raw.slice(0, 12),
        setup.slice(0, 12),
      ]),
      notes: [
        `${program}. Equal records, setups, options, program version and seed give the same decision bit for bit.`,
      ],
    }),
  ]
}
