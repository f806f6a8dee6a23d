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
  const steps = parts.map((part, i): Step => {
    const isBlank = blank[i] && (source.hasGap || i < first || i > last || first < 0)
    return {
      number: part.number,
      kind: isBlank ? 'blank' : 'slide',
      from: part.from,
      to: part.to,
      target: targetSpeed(source.speed(part.from, part.to)),
    }
  })
  return { steps, load }
}

function summaryOf(stretch: Stretch, source: SignalSource): Summary {
  return {
    ...stretch,
    force: Math.abs(mean(source.force(stretch.from, stretch.to))),
    gap: source.hasGap ? mean(source.gap(stretch.from, stretch.to)) : Number.NaN,
  }
}

function mean(values: Float64Array): number {
  let sum = 0
  let count = 0
  for (const value of values) {
    if (Number.isNaN(value)) continue
    sum += value
    count++
  }
  return count === 0 ? Number.NaN : sum / count
}

/** Median force of the stretches that carry at least half of the largest. */
function seenLoad(summaries: readonly Summary[]): number {
  const largest = Math.max(...summaries.map((s) => s.force))
  const loaded = summaries.map((s) => s.force).filter((force) => force >= largest / 2)
  return loaded.sort((a, b) => a - b)[loaded.length >> 1] ?? Number.NaN
}

function splitOff(s: Summary, source: SignalSource, unloaded: (force: number, gap: number) => boolean): Summary[] {
  if (unloaded(s.force, s.gap)) return [s]
  const force = source.force(s.from, s.to)
  const gap = source.hasGap ? source.gap(s.from, s.to) : null
  const free = (i: number) => unloaded(Math.abs(force[i]), gap === null ? Number.NaN : gap[i])
  let head = 0
  while (head < force.length && free(head)) head++
  let tail = force.length
  while (tail > head && free(tail - 1)) tail--
  const bounds = [
    s.from,
    head >= fewestBlankRows ? s.from + head : s.from,
    force.length - tail >= fewestBlankRows ? s.from + tail : s.to,
    s.to,
  ]
  return [0, 1, 2]
    .filter((i) => bounds[i + 1] > bounds[i])
    .map((i) => summaryOf({ number: s.number, from: bounds[i], to: bounds[i + 1] }, source))
}

/** Median of the second half: what the speed settles to. */
function targetSpeed(speed: Float64Array): number {
  const half = speed.slice(speed.length >> 1).sort()
  return half.length === 0 ? Number.NaN : half[half.length >> 1]
}
