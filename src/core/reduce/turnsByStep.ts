import { evenTurns, type TurnMapOptions, type TurnSpan } from './turnMap.ts'

/** Where a step begins and how many samples it holds. */
export interface StepTurns {
  readonly number: number
  /** On the angle's own scale, in turns. */
  readonly turn: number
  readonly samples: number
}

/** Samples that a cell should hold on average. Fewer leave holes where the sampling keeps pace with the turn. */
const samplesPerCell = 2

/**
 * Shares the rows of a turn map out to the steps of a sweep: each step gets a row a turn as long as there are rows and
 * samples enough to fill them, and at least one. With more steps than rows all rows get equally many turns.
 */
export function turnsByStep(
  steps: readonly StepTurns[],
  span: TurnSpan,
  { columns, rows }: TurnMapOptions,
): readonly number[] {
  const stretches = stretchesOf(steps, span)
  if (stretches.length > rows) return evenTurns(span, rows)
  const wanted = stretches.map(({ from, to, samples }) =>
    Math.max(1, Math.min(to - from, Math.floor(samples / (samplesPerCell * columns)))),
  )
  let most = Math.max(...wanted)
  const shared = (): number => wanted.reduce((sum, want) => sum + Math.min(want, most), 0)
  while (most > 1 && shared() > rows) most--
  const edges = stretches.flatMap(({ from, to }, index) => {
    const share = Math.min(wanted[index], most)
    return Array.from({ length: share }, (_, row) => from + Math.floor((row * (to - from)) / share))
  })
  return [...edges, span.to]
}

type Stretch = TurnSpan & { readonly samples: number }

/** Whole turns from one step's first to the next one's; steps that share a turn are one stretch. */
function stretchesOf(steps: readonly StepTurns[], span: TurnSpan): readonly Stretch[] {
  const starts = new Map<number, number>([[span.from, 0]])
  for (const { turn, samples } of steps) {
    const whole = Math.min(span.to - 1, Math.max(span.from, Math.floor(turn)))
    starts.set(whole, (starts.get(whole) ?? 0) + samples)
  }
  const sorted = [...starts].sort(([one], [two]) => one - two)
  return sorted.map(([from, samples], index) => ({ from, to: sorted[index + 1]?.[0] ?? span.to, samples }))
}
