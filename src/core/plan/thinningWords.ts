import type { ThinningFilm } from '../film/index.ts'
import { printQuantity } from '../quantity/index.ts'
import type { PlannedPoint } from './plannedPoints.ts'
import type { QuestionFlow } from './question.ts'

const lawWords = {
  newtonian: 'one viscosity',
  powerLaw: 'power law',
  herschelBulkley: 'Herschel–Bulkley',
  cross: 'Cross',
  carreauYasuda: 'Carreau–Yasuda',
} as const

const rate = (value: number): string =>
  `${Number(value.toPrecision(2)).toLocaleString('en', { useGrouping: false })} 1/s`

/** At which rates the liquid is sheared, what is left of its viscosity, and whether anybody measured it there. */
export function thinningWords(
  flow: QuestionFlow,
  points: readonly PlannedPoint[],
  { film, byOtherRate }: ThinningFilm,
): readonly string[] {
  const inlets = points.flatMap(({ friction }) => (friction.inlet === null ? [] : [friction.inlet]))
  const { low, high } = flow.shearRate
  const sheared = inlets.map(({ shearRate }) => shearRate).sort((a, b) => a - b)
  const thick = inlets.map(({ viscosity }) => viscosity).sort((a, b) => a - b)
  if (sheared.length === 0) return []
  const viscosity = (value: number): string => printQuantity(value, 'viscosity', { digits: 2 })
  const length = (value: number | null): string =>
    value === null ? 'unknown' : printQuantity(value, 'length', { digits: 2 })
  const last = sheared.length - 1
  const beyond = sheared.filter((one) => one < low || one > high).length
  return [
    `The liquid thins: drawn in at ${rate(sheared[0])} to ${rate(sheared[last])} it has ${viscosity(thick[last])} to ${viscosity(thick[0])} (${lawWords[flow.law]}, ${flow.source}).`,
    ...(beyond === 0
      ? []
      : [
          `${beyond} of ${sheared.length} steps shear it beyond the ${rate(low)} to ${rate(high)} that were measured: there the law is stretched.`,
        ]),
    `Which rate stands for the inlet is open: by u/h the film in the middle of the sweep is ${length(film.minimum)}, by v/h ${length(byOtherRate.minimum)}.`,
  ]
}
