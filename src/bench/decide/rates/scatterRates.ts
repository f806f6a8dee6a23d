import { randomFrom } from '../../../core/numeric/index.ts'
import { mixedModel, varianceIntervals } from '../../../core/stats/judging/index.ts'

/** How often the intervals of standard deviations hold the truth. */
export interface ScatterRate {
  readonly samples: number
  readonly days: number
  /** Mountings of each sample on each day. */
  readonly mountings: number
  /** True standard deviation of the days over that of the mountings. */
  readonly dayOverMounting: number
  readonly what: 'day' | 'mounting' | 'all together'
  readonly holds: number
  readonly standardError: number
}

const cases = [
  { samples: 2, days: 3, mountings: 1, dayOverMounting: 0 },
  { samples: 2, days: 3, mountings: 1, dayOverMounting: 1 },
  { samples: 2, days: 6, mountings: 1, dayOverMounting: 1 },
  { samples: 3, days: 5, mountings: 2, dayOverMounting: 1 },
  { samples: 3, days: 5, mountings: 2, dayOverMounting: 2 },
] as const

/** Counts by simulation how often a 95 % interval of each standard deviation holds it. */
export function scatterRates(draws: number, seed: number): readonly ScatterRate[] {
  return cases.flatMap((one, place) => {
    const random = randomFrom(seed, 1000 + place)
    const held = { day: 0, mounting: 0, 'all together': 0 }
    for (let i = 0; i < draws; i++) {
      const days = Array.from({ length: one.days }, () => one.dayOverMounting * random.normal())
      const runs = days.flatMap((shift, day) =>
        Array.from({ length: one.samples * one.mountings }, (_, run) => ({
          day,
          sample: run % one.samples,
          value: shift + random.normal(),
        })),
      )
      const problem = {
        values: runs.map(({ value }) => value),
        design: runs.map(({ sample }) => Array.from({ length: one.samples }, (_, s) => (s === sample ? 1 : 0))),
        causes: [{ name: 'day', levels: runs.map(({ day }) => day) }],
      }
      const { parts, total } = varianceIntervals(problem, mixedModel(problem), { residualName: 'mounting' })
      const truth = { day: one.dayOverMounting, mounting: 1, 'all together': Math.hypot(one.dayOverMounting, 1) }
      for (const { name, low, high } of [...parts, total]) {
        const what = name as keyof typeof truth // the three names just above
        if (low <= truth[what] && (high ?? Number.POSITIVE_INFINITY) >= truth[what]) held[what]++
      }
    }
    return (['day', 'mounting', 'all together'] as const).map((what): ScatterRate => {
      const holds = held[what] / draws
      return { ...one, what, holds, standardError: Math.sqrt((holds * (1 - holds)) / draws) }
    })
  })
}
