import type { ReactNode } from 'react'
import type { Comparison } from '../../../core/terms/index.ts'
import { glued } from '../../sentence/glued.ts'

/** The answer first, in large letters; what it rests on below it. */
export function Verdict({ comparison }: { readonly comparison: Comparison }): ReactNode {
  const { differences, ranking, samples, sentences } = comparison
  const large = sentences.slice(0, Math.max(1, differences.length))
  const many = ranking !== null && samples.length > 2
  return (
    <section aria-label="Verdict">
      {many && <p className="say">{glued(ranking.sentence)}</p>}
      {large.map((sentence) => (
        <p key={sentence} className={many ? undefined : 'say'}>
          {glued(sentence)}
        </p>
      ))}
      <ul className="grounds">
        {sentences
          .slice(large.length)
          .filter((sentence) => sentence !== ranking?.sentence)
          .map((sentence) => (
            <li key={sentence}>{glued(sentence)}</li>
          ))}
      </ul>
      <p className="quiet">{glued(comparison.method)}</p>
    </section>
  )
}
