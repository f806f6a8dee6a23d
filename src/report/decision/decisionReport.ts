import {
  type DecisionSectionName,
  decisionSectionNames,
  type ReportBlock,
  type ReportContent,
} from '../reportContent.ts'
import { type Numbering, numbering } from '../sections/numbering.ts'
import { counted } from '../words/printed.ts'
import type { DecisionInput } from './decisionInput.ts'
import { differenceBlocks, speedBlocks } from './differenceBlocks.ts'
import { howBlocks, recordBlocks } from './howBlocks.ts'
import { replicateBlocks, scatterBlocks } from './scatterBlocks.ts'

type BlocksOf = (input: DecisionInput, numbers: Numbering) => readonly ReportBlock[]

const sections: Readonly<Record<DecisionSectionName, { readonly heading: string; readonly blocks: BlocksOf }>> = {
  decision: { heading: 'Question and answer', blocks: answerBlocks },
  differences: { heading: 'Difference over the speeds', blocks: differenceBlocks },
  speeds: { heading: 'At single speeds', blocks: speedBlocks },
  ranking: { heading: 'Ranking', blocks: rankingBlocks },
  scatter: { heading: 'Scatter between replicates', blocks: scatterBlocks },
  replicates: { heading: 'Replicates', blocks: replicateBlocks },
  how: { heading: 'How it was decided', blocks: howBlocks },
  records: { heading: 'Records', blocks: recordBlocks },
}

/** The report of a decision between samples: the verdict first, then what it rests on, down to every record with its checksum. */
export function decisionReport(input: DecisionInput): ReportContent {
  const { title, comparison, records, date, author } = input
  const numbers = numbering()
  const samples = comparison.samples.map(({ sample, used }) => `${sample} (${used})`).join(', ')
  return {
    title,
    subtitle: `${samples} · ${counted(records.length, 'record')}`,
    date: date ?? null,
    author: author ?? null,
    summary: [...comparison.sentences, ...input.cautions],
    sections: decisionSectionNames
      .map((name) => ({ name, heading: sections[name].heading, blocks: sections[name].blocks(input, numbers) }))
      .filter(({ blocks }) => blocks.length > 0),
    identity: `${title} · decision · ${input.program}`,
  }
}

function answerBlocks({ question, comparison: { scale, margin } }: DecisionInput): ReportBlock[] {
  const size = scale === 'ratio' ? `${Number((100 * margin).toPrecision(3))} % of friction` : `${margin} in friction`
  const said: ReportBlock[] = question === undefined ? [] : [{ kind: 'paragraph', lead: 'Question', text: question }]
  return [
    ...said,
    {
      kind: 'paragraph',
      lead: 'Margin',
      text: `Samples count as the same within ${size}. That is decided by the use, not by the data.`,
    },
  ]
}

function rankingBlocks(
  { comparison: { ranking, samples }, figures }: DecisionInput,
  numbers: Numbering,
): ReportBlock[] {
  if (ranking === null || samples.length < 3) return []
  return [
    { kind: 'paragraph', text: `${ranking.sentence} ${ranking.method}` },
    ...figures.filter(({ name }) => name === 'ranking').map((figure) => numbers.figure(figure)),
  ]
}
