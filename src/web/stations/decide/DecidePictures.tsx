import { type ReactNode, useCallback } from 'react'
import type { Comparison } from '../../../core/terms/index.ts'
import { differenceFigure, rankingFigure, replicateCurvesFigure } from '../../../figure/index.ts'
import { Link } from '../../frame/Link.tsx'
import type { Look } from '../../frame/look.ts'
import { Picture } from '../../pictures/Picture.tsx'

interface DecidePicturesProps {
  readonly comparison: Comparison
  /** Which pair is drawn. */
  readonly place: number
}

/** The difference of a pair, the ranking of many, the replicates behind their means. */
export function DecidePictures({ comparison, place }: DecidePicturesProps): ReactNode {
  const { differences, ranking, samples } = comparison
  const drawRanking = useCallback(
    (width: number, palette: Look) =>
      ranking === null ? '' : rankingFigure({ title: 'Ranking', ranking }, { width, palette, id: 'ranking' }),
    [ranking],
  )
  const drawReplicates = useCallback(
    (width: number, palette: Look) =>
      replicateCurvesFigure(
        { title: 'Replicates behind their means', ...comparison },
        { width, palette, id: 'replicates' },
      ),
    [comparison],
  )
  return (
    <div className="pictures">
      {differences.length > 0 && <Difference comparison={comparison} place={place} />}
      {ranking !== null && samples.length > 2 && <Picture draw={drawRanking} />}
      <Picture draw={drawReplicates} />
    </div>
  )
}

function Difference({ comparison, place }: { readonly comparison: Comparison; readonly place: number }): ReactNode {
  const { differences } = comparison
  const draw = useCallback(
    (width: number, palette: Look) => {
      const difference = comparison.differences[place]
      const title = `${difference.second} against ${difference.first}`
      const { speeds, scale, margin, believable } = comparison
      return differenceFigure(
        { title, speeds, scale, margin, believable, difference },
        { width, palette, id: 'difference' },
      )
    },
    [comparison, place],
  )
  return (
    <section aria-label="Difference over the speeds">
      {differences.length > 1 && (
        <nav className="pairs" aria-label="Pairs">
          {differences.map(({ first, second }, i) => (
            <Link
              key={`${first} ${second}`}
              to={{ search: { pair: i } }}
              aria-current={i === place ? 'true' : undefined}
            >
              {second} against {first}
            </Link>
          ))}
        </nav>
      )}
      <Picture draw={draw} />
    </section>
  )
}
