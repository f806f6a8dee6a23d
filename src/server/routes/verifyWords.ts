import type { Finding, Verification } from '../../bench/lab/index.ts'

/** What a verification came to, each finding as a sentence. */
export const findingsIn = ({ same, sameByOther, findings }: Verification) => ({
  same: same + sameByOther,
  findings: findings.map((finding) => ({ what: finding.what, sentence: sentenceOf(finding) })),
})

function sentenceOf(finding: Finding): string {
  switch (finding.what) {
    case 'damaged':
      return `${finding.problem.what} ${finding.problem.mend}`
    case 'differs':
      return `This version of the program made the result and now gives ${places(finding.differences.length)} of it otherwise.`
    case 'changed':
      return `An earlier version of the program made the result; this one gives ${places(finding.differences.length)} of it otherwise.`
    case 'notComputed':
      return `It was computed once and cannot be computed now: ${finding.problems[0]?.what ?? ''}`
    case 'fault':
      return `The program made a mistake: ${finding.message}`
  }
}

const places = (count: number): string => (count === 1 ? 'one place' : `${count} places`)
