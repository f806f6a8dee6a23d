import type { ReactNode } from 'react'
import type { Comparison } from '../../../core/terms/index.ts'
import type { ReplicatesAnswer } from '../../../server/contract/index.ts'
import { glued } from '../../sentence/glued.ts'

interface VerdictProps {
  readonly comparison: Comparison
  readonly cautions: ReplicatesAnswer['cautions']
  /** Place of the pair that is looked at. */
  readonly pair: number
}

/** The answer first, in large letters: the ranking of many, and the pair that is looked at; what it rests on below it. */
export function Verdict({ comparison, cautions, pair }: VerdictProps): ReactNode {
  const { differences, ranking, samples, sentences } = comparison
  const many = ranking !== null && samples.length > 2 ? [ranking.sentence] : []
  const large = differences.length > 0 ? [...many, differences[pair].sentence] : sentences.slice(0, 1)
  const said = [...differences.map(({ sentence }) => sentence), ...many, ...large]
  const names = samples.map(({ sample }) => sample)
  const warnings = cautions.filter((caution) => caution.samples.every((sample) => names.includes(sample)))
  return (
    <section aria-label="Verdict">
      {large.map((sentence) => (
        <p key={sentence} className="say">
          {glued(sentence)}
        </p>
      ))}
      <ul className="grounds">
        {warnings.map(({ sentence }) => (
          <li key={sentence} className="caution">
            {glued(sentence)}
          </li>
        ))}
        {sentences
          .filter((sentence) => !said.includes(sentence))
          .map((sentence) => (
            <li key={sentence}>{glued(sentence)}</li>
          ))}
      </ul>
      <p className="quiet">{glued(comparison.method)}</p>
    </section>
  )
}
