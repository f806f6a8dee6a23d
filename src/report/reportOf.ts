import { type ReportContent, type ReportSection, sectionNames } from './reportContent.ts'
import type { ReportInput } from './reportInput.ts'
import { asFoundSection } from './sections/asFoundSection.ts'
import { beyondSection } from './sections/beyondSection.ts'
import { budgetSection } from './sections/budgetSection.ts'
import { cautionsSection } from './sections/cautionsSection.ts'
import { completenessSection } from './sections/completenessSection.ts'
import { conditionsSection } from './sections/conditionsSection.ts'
import { curveSection } from './sections/curveSection.ts'
import { limitSection } from './sections/limitSection.ts'
import { methodSection } from './sections/methodSection.ts'
import { numbering } from './sections/numbering.ts'
import { pairSection } from './sections/pairSection.ts'
import { pointsSection } from './sections/pointsSection.ts'
import { provenanceSection } from './sections/provenanceSection.ts'
import { questionSection } from './sections/questionSection.ts'
import { recordSection } from './sections/recordSection.ts'
import { remarksSection } from './sections/remarksSection.ts'
import { rigSection } from './sections/rigSection.ts'
import { rigWatchSection } from './sections/rigWatchSection.ts'
import type { SectionOf } from './sections/sectionOf.ts'
import { summaryOf } from './sections/summaryOf.ts'
import { zeroesSection } from './sections/zeroesSection.ts'
import { fixtureInBrief } from './words/fixtureInWords.ts'
import { capital, printed } from './words/printed.ts'

const sections: Readonly<Record<(typeof sectionNames)[number], SectionOf>> = {
  question: questionSection,
  pair: pairSection,
  rig: rigSection,
  conditions: conditionsSection,
  asFound: asFoundSection,
  zeroes: zeroesSection,
  method: methodSection,
  record: recordSection,
  curve: curveSection,
  beyond: beyondSection,
  limit: limitSection,
  budget: budgetSection,
  remarks: remarksSection,
  rigWatch: rigWatchSection,
  points: pointsSection,
  completeness: completenessSection,
  cautions: cautionsSection,
  provenance: provenanceSection,
}

/** The report of one record. Sections without anything to say are left out; figures and tables are numbered as they come. */
export function reportOf(input: ReportInput): ReportContent {
  const { setup, record, origin, texts } = input
  const title = setup.run.sample ?? record.file
  const numbers = numbering()
  return {
    title,
    subtitle: subtitleOf(input),
    date: texts.date ?? null,
    author: texts.author ?? null,
    summary: summaryOf(input),
    sections: sectionNames
      .map((name): ReportSection => ({ name, ...sections[name](input, numbers) }))
      .filter(({ blocks }) => blocks.length > 0),
    identity: `${record.file} · ${origin.raw.slice(0, 12)}`,
  }
}

function subtitleOf({ setup, texts }: ReportInput): string {
  const { run, pair, liquid, fixture } = setup
  const parts = [
    `${pair.upper.name} on ${pair.lower.name}, ${liquid === undefined ? 'dry' : liquid.name}`,
    capital(fixtureInBrief(fixture)),
  ]
  if (run.axialForce !== undefined) parts.push(printed(run.axialForce, 'force'))
  if (run.temperature !== undefined) parts.push(printed(run.temperature, 'temperature', 4))
  if (texts.replicate !== undefined) parts.push(`replicate ${texts.replicate}`)
  return parts.join(' · ')
}
