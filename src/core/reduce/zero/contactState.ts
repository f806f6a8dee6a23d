import { nthSmallest } from '../../numeric/index.ts'
import type { Setup, Step } from '../../terms/index.ts'
import type { Stretch } from '../segment/byStepColumn.ts'
import type { SignalSource } from '../signals.ts'

/** Below this share of the load nothing touches. */
const unloadedShare = 0.1

/** A gap this far above the gap under load is open, whatever the force says. m */
const openGap = 50e-6

/** Fewest rows of an unloaded run at either end that are split off as a blank. */
const fewestBlankRows = 20

interface Summary extends Stretch {
  readonly force: number
  /** Smallest force of a row, either way. */
  readonly lowest: number
  readonly gap: number
}

/** Which stretches slide, which are blanks, and under which load. */
export interface ContactState {
  readonly steps: readonly Step[]
  /** Axial force that counts as the load: commanded, or seen. */
  readonly load: number
}

/**
 * Tells stretches without contact (blanks) from stretches that slide. With a gap channel a blank is a stretch whose
 * force is under a tenth of the load while the gap stands open; without one, only stretches at the beginning and the
 * end of the record can be blanks, since an unloaded stretch in the middle may be a contact that was lost.
 * An unloaded run at the head or tail of a stretch is split off.
 */
export function contactState(stretches: readonly Stretch[], source: SignalSource, setup: Setup): ContactState {
  const summaries = stretches.map((stretch) => summaryOf(stretch, source))
  const load = setup.run.axialForce ?? seenLoad(summaries)
  const contactGap = Math.min(...summaries.filter((s) => s.force > 0.5 * load).map((s) => s.gap))
  const unloaded = (force: number, gap: number) =>
    force < unloadedShare * load && (!source.hasGap || !Number.isFinite(contactGap) || gap > contactGap + openGap)
  const parts = source.hasForce ? summaries.flatMap((s) => splitOff(s, source, unloaded)) : summaries
  const blank = parts.map((s) => source.hasForce && unloaded(s.force, s.gap))
  const first = blank.indexOf(false)
  const last = blank.lastIndexOf(false)
  const room = new Float64Array(Math.max(0, ...parts.map(({ from, to }) => Math.ceil((to - from) / 2))))
  const steps = parts.map((part, i): Step => {
    const isBlank = blank[i] && (source.hasGap || i < first || i > last || first < 0)
    return {
      number: part.number,
      kind: isBlank ? 'blank' : 'slide',
      from: part.from,
      to: part.to,
      target: targetSpeed(source, part, room),
    }
  })
  return { steps, load }
}

function summaryOf(stretch: Stretch, source: SignalSource): Summary {
  const force = new Mean()
  const openness = new Mean()
  let lowest = Number.POSITIVE_INFINITY
  for (const { axialForce, gap } of source.pages(stretch.from, stretch.to)) {
    force.take(axialForce)
    if (gap !== null) openness.take(gap)
    lowest = Math.min(lowest, smallest(axialForce))
  }
  return { ...stretch, force: Math.abs(force.value), lowest, gap: openness.value }
}

/** Smallest size of a number among them. */
function smallest(values: Float64Array): number {
  let least = Number.POSITIVE_INFINITY
  for (let i = 0; i < values.length; i++) if (Math.abs(values[i]) < least) least = Math.abs(values[i])
  return least
}

/** Mean of what is known of a signal; NaN where nothing is. */
class Mean {
  #sum = 0
  #count = 0

  take(values: Float64Array): void {
    let sum = this.#sum
    let count = this.#count
    for (let i = 0; i < values.length; i++) {
      const value = values[i]
      if (!(value <= Number.POSITIVE_INFINITY)) continue // NaN; Number.isNaN takes longer in code that is run only once
      sum += value
      count++
    }
    this.#sum = sum
    this.#count = count
  }

  get value(): number {
    return this.#count === 0 ? Number.NaN : this.#sum / this.#count
  }
}

/** Median force of the stretches that carry at least half of the largest. */
function seenLoad(summaries: readonly Summary[]): number {
  const largest = Math.max(...summaries.map((s) => s.force))
  const loaded = summaries.map((s) => s.force).filter((force) => force >= largest / 2)
  return loaded.sort((a, b) => a - b)[loaded.length >> 1] ?? Number.NaN
}

function splitOff(s: Summary, source: SignalSource, unloaded: (force: number, gap: number) => boolean): Summary[] {
  if (unloaded(s.force, s.gap) || !unloaded(s.lowest, Number.POSITIVE_INFINITY)) return [s]
  let head: number | undefined
  let tail = s.to
  for (const { from, axialForce, gap } of source.pages(s.from, s.to)) {
    for (let i = 0; i < axialForce.length; i++) {
      if (unloaded(Math.abs(axialForce[i]), gap === null ? Number.NaN : gap[i])) continue
      head ??= from + i
      tail = from + i + 1
    }
  }
  head ??= s.to
  const bounds = [
    s.from,
    head - s.from >= fewestBlankRows ? head : s.from,
    s.to - tail >= fewestBlankRows ? tail : s.to,
    s.to,
  ]
  return [0, 1, 2]
    .filter((i) => bounds[i + 1] > bounds[i])
    .map((i) => summaryOf({ number: s.number, from: bounds[i], to: bounds[i + 1] }, source))
}

/** Median of the second half: what the speed settles to. */
function targetSpeed(source: SignalSource, { from, to }: Stretch, room: Float64Array): number {
  const middle = from + ((to - from) >> 1)
  for (const page of source.pages(middle, to)) room.set(page.angularVelocity, page.from - middle)
  const half = room.subarray(0, to - middle)
  return half.length === 0 ? Number.NaN : nthSmallest(half, half.length >> 1)
}
