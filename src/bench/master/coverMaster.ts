import { masterCurve } from '../../core/curve/index.ts'
import { reduceRecord } from '../../core/reduce/index.ts'
import { sampleMaster, simulateRecord } from '../../core/rig/index.ts'
import type { CoverageMark } from '../coverRun.ts'
import { masterPoints } from './masterPoints.ts'

/** Rows of the table, in order. */
export const masterGroups = [
  'shift beyond the stated viscosity',
  'the same, viscosities unsure',
  'collapse of true viscosities kept',
] as const

/** One virtual series of liquids: whether each shift holds what is truly left, and 1 where the viscosities' own uncertainty counts. */
export function coverMaster(seed: number, index: number): CoverageMark[] {
  const { liquids } = sampleMaster(seed, index)
  const read = liquids.map(({ run, setup, seed: own, trueViscosity }) => {
    const { channels } = simulateRecord(run, own)
    const reduction = reduceRecord(channels, setup)
    if (!reduction.ok) throw new Error(reduction.problems.map(({ what }) => what).join(' '))
    const viscosity = setup.liquid?.viscosity ?? Number.NaN
    return {
      points: reduction.value.points,
      viscosity,
      viscosityUncertainty: (setup.liquid?.viscosityUncertainty ?? 0) / viscosity,
      trueViscosity,
    }
  })
  const fitted = (by: 'viscosity' | 'trueViscosity', unsure: boolean) =>
    masterCurve(
      read.map((liquid, i) => ({
        name: `liquid ${i + 1}`,
        points: masterPoints(liquid.points, liquid[by]),
        viscosity: liquid[by],
        viscosityUncertainty: unsure ? liquid.viscosityUncertainty : 0,
      })),
      { seed: index },
    )
  const told = fitted('viscosity', true)
  const known = fitted('trueViscosity', false)
  const left = read.map(
    ({ trueViscosity, viscosity }) => trueViscosity / viscosity / (read[0].trueViscosity / read[0].viscosity),
  )
  const marks = (told?.shifts ?? []).slice(1).flatMap(({ beyond, beyondWithViscosity }, i): CoverageMark[] => [
    { group: masterGroups[0], inside: beyond.low <= left[i + 1] && left[i + 1] <= beyond.high },
    { group: masterGroups[1], inside: beyondWithViscosity.low <= 1 && beyondWithViscosity.high >= 1 },
  ])
  return [...marks, { group: masterGroups[2], inside: known === undefined ? null : known.better.probability > 0.05 }]
}
