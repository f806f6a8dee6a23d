import type { PaletteName } from '../../figure/index.ts'
import type { ReportFigure } from '../../report/index.ts'
import type { Compared } from './compared.ts'
import { drawDifference, drawRanking, drawReplicates } from './drawComparison.ts'

/** Pictures of a decision for its report, for light and dark pages. */
export function decisionFigures(compared: Compared): ReportFigure[] {
  const { differences, samples } = compared.comparison
  const figure = (
    name: ReportFigure['name'],
    caption: string,
    draw: (palette: PaletteName) => string,
  ): ReportFigure => ({
    ...{ name, caption },
    svg: draw('light'),
    darkSvg: draw('dark'),
  })
  const ranked = samples.length > 2 && drawRanking(compared, 'light') !== undefined
  return [
    ...differences.map(({ first, second }, i) =>
      figure('difference', `${second} against ${first} over the speeds, with margin and band.`, (palette) =>
        drawDifference(compared, i, palette),
      ),
    ),
    ...(ranked
      ? [figure('ranking', 'Samples from the most slippery on.', (palette) => drawRanking(compared, palette) ?? '')]
      : []),
    figure('replicates', 'Every replicate, and the mean of each sample with its 95 % band.', (palette) =>
      drawReplicates(compared, palette),
    ),
  ]
}
