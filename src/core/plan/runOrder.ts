import { type Random, randomFrom } from '../numeric/index.ts'

/** What has to be run, and what comes in blocks. */
export interface OrderQuestion {
  /** Names of the samples. */
  readonly samples: readonly string[]
  /** Of each sample. */
  readonly replicates: number
  /** Runs that one day holds, check standards among them. */
  readonly runsPerDay: number
  /** Records that one set of balls bears; 1 asks for a fresh set each time. */
  readonly runsPerBallSet: number
  /** Name of the check standard; none is run where undefined. */
  readonly checkStandard?: string
  /** Runs between two check standards. */
  readonly checkEvery?: number
  readonly seed: number
}

/** One run in its place. */
export interface OrderedRun {
  readonly run: number
  readonly day: number
  readonly block: number
  readonly ballSet: number
  readonly sample: string
  /** Which replicate of its sample; 0 for the check standard. */
  readonly replicate: number
  readonly kind: 'sample' | 'checkStandard'
}

/**
 * Complete blocks: each holds every sample once, in an order drawn from the seed, so that day, drift and ball set meet all samples
 * alike. A day holds whole blocks where it can. A check standard opens and closes each day and stands between every
 * `checkEvery` runs. The same seed gives the same order.
 */
export function runOrder(question: OrderQuestion): readonly OrderedRun[] {
  checkOrder(question)
  const random = randomFrom(question.seed)
  const days = daysOf(question, random)
  const runs: OrderedRun[] = []
  let ballSet = 0
  let onSet = question.runsPerBallSet
  const add = (day: number, planned: Planned): void => {
    // The check standard watches the rig, not the balls: it brings its own.
    if (planned.kind === 'sample') {
      if (onSet >= question.runsPerBallSet) {
        ballSet++
        onSet = 0
      }
      onSet++
    }
    runs.push({ run: runs.length + 1, day, ballSet: planned.kind === 'sample' ? ballSet : 0, ...planned })
  }
  for (const [index, day] of days.entries()) for (const planned of withChecks(day, question)) add(index + 1, planned)
  return runs
}

type Planned = Pick<OrderedRun, 'block' | 'sample' | 'replicate' | 'kind'>

/** Blocks shared out to days; a block is split only where a whole one fits into no day. */
function daysOf(question: OrderQuestion, random: Random): readonly Planned[][] {
  const { samples, replicates } = question
  const room = roomFor(question)
  const days: Planned[][] = [[]]
  for (let replicate = 1; replicate <= replicates; replicate++) {
    const block = shuffled(samples, random).map(
      (sample) => ({ block: replicate, sample, replicate, kind: 'sample' }) as const,
    )
    const last = days[days.length - 1]
    if (last.length > 0 && last.length + block.length > room && block.length <= room) days.push([...block])
    else {
      for (const planned of block) {
        const open = days[days.length - 1]
        if (open.length >= room) days.push([planned])
        else open.push(planned)
      }
    }
  }
  return days
}

/** Runs of a day that are left for samples: one for each check standard goes off. */
function roomFor({ runsPerDay, checkStandard, checkEvery = usualCheckEvery }: OrderQuestion): number {
  if (checkStandard === undefined) return runsPerDay
  let room = Math.max(1, runsPerDay - 2)
  while (room > 1 && room + 2 + Math.floor((room - 1) / checkEvery) > runsPerDay) room--
  return room
}

/** A check standard at the start, the end and every six runs: common practice, no source. */
export const usualCheckEvery = 6

function withChecks(day: readonly Planned[], question: OrderQuestion): readonly Planned[] {
  const { checkStandard, checkEvery = usualCheckEvery } = question
  if (checkStandard === undefined) return day
  const check = (block: number): Planned => ({ block, sample: checkStandard, replicate: 0, kind: 'checkStandard' })
  const runs: Planned[] = [check(day[0].block)]
  for (const [index, planned] of day.entries()) {
    if (index > 0 && index % checkEvery === 0) runs.push(check(planned.block))
    runs.push(planned)
  }
  return [...runs, check(day[day.length - 1].block)]
}

/** Fisher and Yates. */
function shuffled<T>(items: readonly T[], random: Random): T[] {
  const drawn = [...items]
  for (let i = drawn.length - 1; i > 0; i--) {
    const j = random.integer(i + 1)
    const kept = drawn[i]
    drawn[i] = drawn[j]
    drawn[j] = kept
  }
  return drawn
}

function checkOrder({ samples, replicates, runsPerDay, runsPerBallSet, checkEvery = 1 }: OrderQuestion): void {
  if (samples.length === 0) throw new RangeError('samples must hold at least one, got none')
  if (new Set(samples).size !== samples.length) throw new RangeError(`samples must differ, got ${samples.join(', ')}`)
  for (const [name, value] of Object.entries({ replicates, runsPerDay, runsPerBallSet, checkEvery })) {
    if (!(Number.isInteger(value) && value >= 1))
      throw new RangeError(`${name} must be a whole number from 1, got ${value}`)
  }
}
