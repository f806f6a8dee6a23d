import type { ReportInput } from '../reportInput.ts'
import { causeWords } from '../words/causeWords.ts'
import { decimals, percent } from '../words/printed.ts'
import { figureNamed } from './figureNamed.ts'
import type { SectionOf } from './sectionOf.ts'

/** A smaller shared part, relative to friction, is not worth a table. */
const leastTold = 1e-4

/** Which cause makes the shared part, and how large the own part is beside it. */
export const budgetSection: SectionOf = (input, numbers) => {
  const { budget } = input
  const total = Math.hypot(...budget.map(({ relative }) => relative))
  const told = total < leastTold ? [] : budget.filter(({ share }) => share >= 0.0005)
  const figure = figureNamed('budget', input, numbers)
  const own = ownInWords(input)
  if (told.length === 0) {
    const text =
      budget.length === 0
        ? 'Neither an accuracy of the rig nor an uncertainty of the fixture is stated that would move all points together.'
        : 'What is stated of rig and fixture moves all points together by less than 0.01 % of friction. Accuracies that nobody stated are not in it.'
    return { heading: 'Uncertainty budget', blocks: [{ kind: 'paragraph', text: `${text} ${own}`.trim() }, ...figure] }
  }
  return {
    heading: 'Uncertainty budget',
    blocks: [
      ...figure,
      numbers.table({
        caption: `The part that all points share: standard uncertainty ${percent(total)} of friction (root mean square over the trusted points), by cause.`,
        columns: [
          { head: 'cause', unit: '', align: 'left' },
          { head: 'standard uncertainty', unit: '% of friction', align: 'point' },
          { head: 'share of the variance', unit: '%', align: 'point' },
        ],
        rows: told.map(({ source, relative, share }) => [
          causeWords[source],
          decimals(100 * relative, 3),
          decimals(100 * share, 1),
        ]),
        notes: own === '' ? [] : [own],
      }),
    ],
  }
}

/** Own standard uncertainties beside the shared part. */
function ownInWords({ reduction: { points } }: ReportInput): string {
  const own = points.flatMap(({ friction, ownUncertainty, trusted }) =>
    trusted && friction !== null && friction !== 0 && ownUncertainty !== null
      ? [ownUncertainty / Math.abs(friction)]
      : [],
  )
  if (own.length === 0) return ''
  const sorted = own.sort((a, b) => a - b)
  const middle = percent(sorted[sorted.length >> 1])
  const most = percent(sorted[sorted.length - 1])
  return `Own part of the trusted points, standard uncertainty: ${middle} of friction in the middle, ${most} at most.`
}
