import type { DifferenceStretch, MetrePerSecond } from '../terms/index.ts'

/** An effect with its band over the speeds, and the margin to either side, all in one scale. */
export interface JudgedBand {
  readonly speeds: readonly MetrePerSecond[]
  readonly value: readonly number[]
  readonly low: readonly number[]
  readonly high: readonly number[]
  readonly lowMargin: number
  readonly highMargin: number
}

/** Neighbouring speeds with one answer, from slow to fast. Each answer holds at the speeds of the grid, all at once. */
export function stretchesOf(band: JudgedBand): DifferenceStretch[] {
  const answers = band.speeds.map((_, i) => answerAt(band, i))
  const runs: number[][] = []
  for (const [i, answer] of answers.entries()) {
    const run = runs.at(-1)
    if (run !== undefined && isSame(answers[run[0]], answer)) run.push(i)
    else runs.push([i])
  }
  return runs.map((run) => {
    const values = run.map((i) => band.value[i])
    return {
      ...answers[run[0]],
      from: band.speeds[run[0]],
      to: band.speeds[run[run.length - 1]],
      least: Math.min(...values),
      most: Math.max(...values),
      low: Math.min(...run.map((i) => band.low[i])),
      high: Math.max(...run.map((i) => band.high[i])),
    }
  })
}

type Answer = Pick<DifferenceStretch, 'verdict' | 'within' | 'beyond'>

function answerAt({ low, high, lowMargin, highMargin }: JudgedBand, i: number): Answer {
  const verdict = high[i] < 0 ? 'lower' : low[i] > 0 ? 'higher' : 'open'
  return {
    verdict,
    within: low[i] > lowMargin && high[i] < highMargin,
    beyond: high[i] < lowMargin || low[i] > highMargin,
  }
}

const isSame = (a: Answer, b: Answer): boolean =>
  a.verdict === b.verdict && a.within === b.within && a.beyond === b.beyond
