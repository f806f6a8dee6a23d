import { differenceFigure, type PaletteName, rankingFigure, replicateCurvesFigure } from '../../figure/index.ts'
import type { Compared } from './compared.ts'

/** The picture that says most: the difference of the first pair, or the replicates where there is none. */
export function drawComparison(compared: Compared, palette: PaletteName): string {
  const [difference] = compared.comparison.differences
  return difference === undefined ? drawReplicates(compared, palette) : drawDifference(compared, 0, palette)
}

/** One pair against each other, by its place among the differences. */
export function drawDifference({ comparison }: Compared, place: number, palette: PaletteName): string {
  const difference = comparison.differences[place]
  const { speeds, scale, margin, believable } = comparison
  const caption = `difference of ${scale === 'ratio' ? 'friction as a share' : 'friction'} · ${comparison.samples.map(({ sample, used }) => `${sample}: ${used}`).join(', ')} replicates`
  return differenceFigure(
    {
      title: `${difference.second} against ${difference.first}`,
      caption,
      speeds,
      scale,
      margin,
      believable,
      difference,
    },
    { palette, id: `difference-${place}-${palette}` },
  )
}

/** Every replicate behind the mean of its sample. */
export const drawReplicates = ({ title, comparison }: Compared, palette: PaletteName): string =>
  replicateCurvesFigure(
    { title: `Replicates: ${title}`, speeds: comparison.speeds, samples: comparison.samples },
    { palette, id: `replicates-${palette}` },
  )

/** The ranking, where there is one. */
export const drawRanking = ({ title, comparison: { ranking } }: Compared, palette: PaletteName): string | undefined =>
  ranking === null
    ? undefined
    : rankingFigure({ title: `Ranking: ${title}`, ranking }, { palette, id: `ranking-${palette}` })
