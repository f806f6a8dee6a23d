import { type FilmAxis, frictionMap, placeOnFilmAxis, seriesOf } from '../../core/curve/index.ts'
import { fixtureGeometry, normalLoad } from '../../core/fixture/index.ts'
import {
  done,
  failed,
  type Outcome,
  type Outside,
  type Point,
  type Series,
  type SeriesAxis,
  type SeriesMember,
  schemaVersion,
} from '../../core/terms/index.ts'
import {
  frictionMapFigure,
  type PaletteName,
  type SeriesFigureData,
  seriesFigure,
  seriesMultiplesFigure,
} from '../../figure/index.ts'
import type { ReducedRecord } from '../reducedRecord.ts'
import { reduceFile } from '../reduceFile.ts'
import { forEachFile, headOf, type ManyFilesArgs, textOf } from './answered.ts'

/** Records at several loads or temperatures, taken together. */
export interface SeriesOfFiles {
  readonly records: readonly ReducedRecord[]
  readonly series: Series
  /** Axis of the picture. */
  readonly filmAxis: FilmAxis
}

export interface SeriesArgs extends ManyFilesArgs {
  readonly against: SeriesAxis
  readonly filmAxis: FilmAxis
}

/** Forces that differ by less than this share count as one condition. */
const oneCondition = { force: 0.05 } as const

/** Reads records, reduces each, and fits the law of friction along their loads or temperatures. */
export async function seriesOfFiles(args: SeriesArgs, outside: Outside): Promise<Outcome<SeriesOfFiles>> {
  const records = await forEachFile(args, outside, (one) => reduceFile(one, outside))
  if (!records.ok) return records
  const members = records.value.flatMap(membersOf)
  const series = seriesOf(args.against, members)
  if (series.members.length < 2) return failed(fewRecords(args.against, series.members.length))
  if (args.filmAxis !== 'speed' && series.members.some(({ viscosity }) => viscosity === null))
    return failed(noViscosity)
  return done({ records: records.value, series, filmAxis: args.filmAxis })
}

/** The conditions of one record: a member for each force that it holds. */
function membersOf({ reduction, setup, file }: ReducedRecord): SeriesMember[] {
  const usable = reduction.points.filter(
    (point): point is Point & { friction: number } => point.trusted && point.friction !== null && point.friction > 0,
  )
  const groups: (Point & { friction: number })[][] = []
  for (const point of [...usable].sort((a, b) => a.axialForce - b.axialForce)) {
    const group = groups[groups.length - 1]
    if (group !== undefined && point.axialForce <= group[0].axialForce * (1 + oneCondition.force)) group.push(point)
    else groups.push([point])
  }
  const geometry = fixtureGeometry(setup.fixture)
  return groups.map((points): SeriesMember => {
    const force = mean(points.map(({ axialForce }) => axialForce))
    const read = points.flatMap(({ temperature }) => (temperature === null ? [] : [temperature]))
    return {
      name: groups.length === 1 ? (setup.run.sample ?? file) : `${file}, ${Number(force.toPrecision(3))} N`,
      axialForce: force,
      load: normalLoad(geometry, force),
      temperature: read.length > 0 ? mean(read) : (setup.run.temperature ?? null),
      viscosity: setup.liquid?.viscosity ?? null,
      points: points
        .map(({ slidingSpeed, friction, ownUncertainty }) => ({
          slidingSpeed,
          friction,
          ownUncertainty: ownUncertainty ?? 0,
        }))
        .sort((a, b) => a.slidingSpeed - b.slidingSpeed),
      forceZero: reduction.forceZero.levelUncertainty,
    }
  })
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

const fewRecords = (against: SeriesAxis, count: number) =>
  ({
    kind: 'fewRecords',
    class: 'badInput',
    place: {},
    what: `A series along the ${against} needs two records or more; ${count} can be used.`,
    mend: against === 'temperature' ? 'Give records with a temperature.' : 'Give records at other loads.',
  }) as const

const noViscosity = {
  kind: 'viscosityMissing',
  class: 'badInput',
  place: { name: 'liquid.viscosity' },
  what: 'An axis with the viscosity needs it for every record, at the temperature of that record.',
  mend: 'Write "viscosity" under "liquid" in each setup, or take the sliding speed as the axis.',
} as const

/** For machines; SI throughout. Fields: docs/verbs/series.md. */
export const seriesText = ({ records, series, filmAxis }: SeriesOfFiles): string =>
  textOf({ schemaVersion, records: records.map(headOf), filmAxis, ...series })

const axisTitles: Readonly<Record<FilmAxis, { readonly title: string; readonly scale: number }>> = {
  speed: { title: 'sliding speed (mm/s)', scale: 1000 },
  film: { title: 'viscosity × speed (mPa·m)', scale: 1000 },
  filmPerLoad: { title: 'viscosity × speed / load (1/m)', scale: 1 },
}

function figureData({ records, series, filmAxis }: SeriesOfFiles): SeriesFigureData {
  const { title, scale } = axisTitles[filmAxis]
  const places = series.members.map((member) =>
    member.points.map(({ slidingSpeed }) => {
      const place = placeOnFilmAxis(filmAxis, member, slidingSpeed)
      return place === null ? null : place * scale
    }),
  )
  return {
    title: series.axis === 'load' ? 'Load series' : 'Temperature series',
    caption: series.sentences[0],
    note: records[0]?.setup.run.note,
    series,
    across: { title, places },
  }
}

/** All records in one picture, with the law below. */
export const drawSeries = (found: SeriesOfFiles, palette: PaletteName): string =>
  seriesFigure(figureData(found), { palette })

/** A small picture for every record. */
export const drawMultiples = (found: SeriesOfFiles, palette: PaletteName): string =>
  seriesMultiplesFigure(figureData(found), { palette })

/** Friction over speed and load; undefined where only one load was measured. */
export function drawFrictionMap({ series }: SeriesOfFiles, palette: PaletteName): string | undefined {
  const loads = series.members.map(({ axialForce }) => axialForce)
  if (!(Math.max(...loads) > Math.min(...loads) * (1 + oneCondition.force))) return undefined
  return frictionMapFigure({ title: 'Friction over speed and load', ...frictionMap(series.members) }, { palette })
}
