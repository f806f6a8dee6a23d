import type { Replicate, ReplicatePoint } from '../../../src/core/decide/index.ts'

/** Speeds of an invented run sheet: 0.5 to 200 mm/s, four a decade. */
export const steps: readonly number[] = Array.from({ length: 11 }, (_, i) => 5e-4 * 400 ** (i / 10))

/** A replicate of an invented lacquer: friction by a law of speed, times its level. */
export function replicate(
  sample: string,
  number: number,
  {
    level = 1,
    law = () => 0.2,
    speeds = steps,
    ...rest
  }: Partial<Replicate> & {
    readonly level?: number
    readonly law?: (speed: number) => number
    readonly speeds?: readonly number[]
  } = {},
): Replicate {
  const points = speeds.map(
    (slidingSpeed): ReplicatePoint => ({
      slidingSpeed,
      friction: level * law(slidingSpeed),
      own: 0.001 * level * law(slidingSpeed),
      shared: { torqueScale: 0.01, lever: 0.002 },
    }),
  )
  const record = `${sample}-${number}`
  return {
    ...{ record, name: `${record}.csv`, sample, points },
    window: { low: speeds[0], high: speeds[speeds.length - 1] },
    ...{ rig: 'rig', fixture: 'balls' },
    blocks: { day: null, operator: null, ballSet: null },
    ...rest,
  }
}

/** Several replicates by their levels. */
export const replicates = (
  sample: string,
  levels: readonly number[],
  more: Omit<Parameters<typeof replicate>[2], 'level'> = {},
): Replicate[] => levels.map((level, i) => replicate(sample, i + 1, { ...more, level }))
