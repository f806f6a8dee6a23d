import type { Finding, KeptRecord, Verification } from '../../bench/lab/index.ts'
import { painted, type Screen } from '../screen.ts'
import { shortId } from './addInWords.ts'
import { type ChangedFinding, changesInWords } from './changesInWords.ts'
import { printable } from './printable.ts'

/** What was looked at, and every finding with what it means. */
export function verificationInWords(seen: Verification, screen: Screen): string {
  const { records, setups, results, program, findings } = seen
  const looked = `${counted(records, 'record')}, ${counted(setups, 'setup')}, ${counted(results, 'result')} held against their checksums.`
  const lines = [
    `Lab ${seen.where}: ${looked}`,
    ...part(seen.same, `computed again by ${program}: bit for bit the same.`),
    ...part(seen.sameByOther, `of other versions: ${program} gives the same but for its name.`),
    ...part(seen.superseded, `of other versions have one of ${program} beside them.`),
    ...part(seen.keptBeside, `of ${program} kept beside those of other versions.`),
    ...notReduced(seen),
  ]
  const verdict =
    findings.length === 0
      ? painted(screen, 'Nothing was found.', 'accent')
      : painted(screen, `${counted(findings.length, 'finding')}:`, 'warn')
  const changed = findings.filter((finding) => finding.what === 'differs' || finding.what === 'changed')
  const others = findings.filter((finding) => finding.what !== 'differs' && finding.what !== 'changed')
  const told = [...others.map((finding) => findingInWords(finding, screen)), ...changedInWords(changed, screen)]
  return `${[...lines, verdict, ...told].join('\n')}\n`
}

const counted = (count: number, one: string): string => `${count.toLocaleString('en')} ${one}${count === 1 ? '' : 's'}`

const part = (count: number, words: string): string[] => (count === 0 ? [] : [`  ${counted(count, 'result')} ${words}`])

function notReduced({ notReduced: records }: Verification): string[] {
  if (records.length === 0) return []
  return [`  ${counted(records.length, 'record')} without a result of their setup: ${named(records)}`]
}

/** Up to five records by name and id. */
function named(records: readonly KeptRecord[]): string {
  const names = records.slice(0, 5).map(({ id, name }) => `${printable(name, 40)} (${shortId(id)})`)
  const left = records.length - names.length
  return `${names.join(', ')}${left > 0 ? ` and ${left} more` : ''}`
}

function findingInWords(finding: Exclude<Finding, ChangedFinding>, screen: Screen): string {
  const records = finding.what === 'damaged' ? finding.records : [finding.record]
  const whose = records.length === 0 ? '' : `${named(records)}: `
  const head = (text: string): string => `  ${painted(screen, `${whose}${text}`, 'strong')}`
  switch (finding.what) {
    case 'damaged':
      return `${head(finding.problem.what)}\n    ${finding.problem.mend}`
    case 'notComputed':
      return [
        head('its result cannot be computed again.'),
        ...finding.problems.map(({ what, mend }) => `    ${what} ${mend}`),
      ].join('\n')
    case 'fault':
      return head(`a fault of ours, ${finding.message}`)
  }
}

/** Findings that differ alike are told together: a new version changes many records in one way. */
function changedInWords(findings: readonly ChangedFinding[], screen: Screen): string[] {
  const groups = Map.groupBy(findings, ({ what, result }) => `${what} ${result.origin.program}`)
  return [...groups.values()].map((alike) => {
    const [{ what, result }] = alike
    const { program } = result.origin
    const beside = alike.some((one) => one.what === 'changed' && one.keptBeside)
    const head =
      what === 'differs'
        ? `${counted(alike.length, 'result')} of ${program} that ${program} does not give again:`
        : `${counted(alike.length, 'result')} of ${program} that this version gives otherwise; ${beside ? 'its own are kept beside them:' : 'keep its own beside them with --keep:'}`
    return `  ${painted(screen, head, 'strong')}\n${changesInWords(alike)}`
  })
}
