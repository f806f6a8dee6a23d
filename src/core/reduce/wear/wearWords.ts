import { printQuantity } from '../../quantity/index.ts'
import type { Interval, Remark, Setup } from '../../terms/index.ts'
import { pressureLimit } from './movedByWear.ts'
import type { RecordWear, WearRate } from './wearAnswer.ts'

type Bare = Omit<RecordWear, 'sentences' | 'remarks'>

const length = (value: number): string => printQuantity(value, 'length', { digits: 3 })
const pressure = (value: number): string => printQuantity(value, 'pressure', { digits: 3 })
const percent = (value: number): string => printQuantity(value, 'ratio', { digits: 2 })

/** A small volume or rate with an exponent: `6.14e-4 mm³`. */
const small = (value: number, unit: string): string =>
  `${value !== 0 && Math.abs(value) < 1e-2 ? value.toExponential(2) : Number(value.toPrecision(3))} ${unit}`

/** m³ in mm³ with its interval. */
export const volumeInWords = ({ value, low, high }: Interval): string =>
  `${small(value * 1e9, 'mm³')} (95 % ${small(low * 1e9, '').trim()} to ${small(high * 1e9, '').trim()})`

/** m³/(N·m) in mm³/(N·m) with its interval and what moves all rates together. */
export function rateInWords({ rate, shared }: WearRate): string {
  const { value, low, high } = rate
  const together = Math.hypot(...Object.values(shared).map((one) => one ?? 0))
  const also = together > 5e-4 ? `; load and distance move all rates together by ${percent(together)} (standard)` : ''
  return `${small(value * 1e9, 'mm³/(N·m)')} (95 % ${small(low * 1e9, '').trim()} to ${small(high * 1e9, '').trim()}${also})`
}

const bodies = { balls: 'the balls', track: 'the track', gap: 'the gap, as if the balls alone wore,' } as const

/** What was lost, how fast, and how sure that is. */
export function wearSentences(found: Bare, { worn }: Setup): readonly string[] {
  const { slid, balls, track, gap, rates } = found
  const before = worn?.distanceBefore === undefined ? '' : ` after ${length(worn.distanceBefore)} before the record`
  return [
    `Each contact slid ${length(slid.distance)} under ${printQuantity(slid.load, 'force', { digits: 3 })}${before}.`,
    ballsInWords(balls),
    track === null
      ? ''
      : `The track lost ${volumeInWords(track.volume)}, by ${track.from === 'sections' ? 'its profiles' : 'its width, as if the ball had worn its own shape'}.`,
    ...rates.map((rate) => `Specific wear rate of ${bodies[rate.of]} ${rateInWords(rate)}.`),
    gapInWords(gap),
    balls === null && track === null && gap === null
      ? 'Nothing tells wear: the setup has no "worn" section and the record no gap.'
      : '',
    movedInWords(found),
  ].filter((sentence) => sentence !== '')
}

function ballsInWords(balls: Bare['balls']): string {
  if (balls === null) return ''
  const count = balls.scars.length
  const each = balls.scars.map(({ diameter }) => length(diameter)).join(', ')
  const off = balls.approximate / balls.volume.value - 1
  return (
    `${count === 1 ? 'The scar' : `${count} scars`} of ${each} lost ${volumeInWords(balls.volume)}${count === 1 ? '' : ' together'}; ` +
    `the approximate form πd⁴/64R gives ${percent(Math.abs(off))} ${off < 0 ? 'less' : 'more'}.`
  )
}

function gapInWords(gap: Bare['gap']): string {
  if (gap === null) return ''
  const { depth, drift } = gap
  if (!(depth.low > 0)) {
    return `The gap tells no wear: it moved by ${length(-depth.value)} (95 % ${length(-depth.high)} to ${length(-depth.low)}, own part alone).`
  }
  const seen = `The gap fell by ${length(depth.value)} (95 % ${length(depth.low)} to ${length(depth.high)}, own part alone)`
  const growth = `${(drift.growth * 1e6).toPrecision(2)} µm/K${drift.from === 'usual' ? ', as usual' : ''}`
  const taken =
    drift.warming === null
      ? `no temperature channel tells how much of that is growth of shaft and fixture (${growth})`
      : `${length(Math.abs(drift.depth))} of growth were ${drift.depth < 0 ? 'added' : 'taken off'} for ${Number(drift.warming.toPrecision(2))} K of warming (${growth})`
  const clear = gap.clear
    ? 'it stands clear of the drift'
    : `a warming of ${Math.abs(drift.feignedBy).toPrecision(2)} K that the sensor does not see would feign it, so it is no proof of wear`
  return `${seen}; ${taken}; ${clear}.`
}

const verdicts = {
  no: 'Wear did not move the pressure during the sweep: the flat is no wider than the elastic contact.',
  little: `Wear moved the pressure during the sweep by less than ${percent(pressureLimit)}.`,
  yes: 'Wear moved the pressure during the sweep, and the regimes with it.',
  cannotTell: 'Whether wear moved the pressure during the sweep cannot be told.',
} as const

function movedInWords({ moved, pressure: history, pressureFrom }: Bare): string {
  const { verdict, boundary, repeats } = moved
  const first = history[0]
  const last = history[history.length - 1]
  const repeated =
    repeats === null
      ? ''
      : ` At ${repeats.pairs === 1 ? 'the speed that comes' : `the ${repeats.pairs} speeds that come`} twice friction was later ${repeats.ratio.value.toFixed(3)} times (95 % ${repeats.ratio.low.toFixed(3)} to ${repeats.ratio.high.toFixed(3)}) what it was before.`
  if (first === undefined || last === undefined || moved.pressure === null) {
    return `${verdicts[verdict]} It needs scars, or a gap that stands clear of drift, and the moduli of both bodies.${repeated}`
  }
  const fall = `Mean pressure: ${pressure(last.ifFresh)} fresh, ${pressure(first.pressure.value)} in step ${first.step}, ${pressure(last.pressure.value)} in step ${last.step} (95 % ${pressure(last.pressure.low)} to ${pressure(last.pressure.high)}), if wear goes with load and distance${pressureFrom === 'gap' ? ' and the gap tells the balls alone' : ''}.`
  const shifted =
    verdict === 'no' || boundary === null
      ? ''
      : ` A regime boundary that keeps to ηv/(pL) would end at ${boundary.byWidth.toFixed(2)} of the speed at which it began, one that keeps to ηv/p at ${boundary.byPressure.toFixed(2)}.`
  return `${verdicts[verdict]} ${fall}${shifted}${advice(moved)}${repeated}`
}

function advice({ verdict, elasticFor, runInFor }: Bare['moved']): string {
  if (verdict === 'no' || verdict === 'little') return ''
  const budget =
    elasticFor === null ? '' : ` The flat stays within the elastic contact for ${length(elasticFor)} of sliding.`
  const order =
    runInFor === null
      ? ''
      : ` Or run in for ${length(runInFor)} first: then the same sweep moves the pressure by ${percent(pressureLimit)}.`
  return `${budget}${order}`
}

/** Probability under which scars of one size are not believed. */
const significance = 0.05
/** Larger over smaller diameter of one scar that is let pass. Common practice, no source. */
const roundEnough = 1.15

/** Findings on wear. */
export function wearRemarks({ balls, gap, moved }: Bare): readonly Remark[] {
  const remarks: Remark[] = []
  const unlike = balls?.unlike
  if (unlike != null && unlike.probability < significance) {
    const shares = unlike.shares.map((share) => percent(share)).join(', ')
    remarks.push({
      kind: 'scarsUnequal',
      seen: unlike.probability,
      limit: significance,
      unit: '',
      sentence: `The scars are unequal beyond their reading: shares of the worn volume ${shares}. If wear goes with load, so did the load.`,
      next: 'Align the plate or use a compliant coupling; one profile through each scar tells whether they are flat.',
    })
  }
  const round = Math.max(0, ...(balls?.scars ?? []).map(({ outOfRound }) => outOfRound))
  if (round > roundEnough) {
    remarks.push({
      kind: 'scarNotRound',
      seen: round,
      limit: roundEnough,
      unit: '',
      sentence: `A scar is ${round.toFixed(2)} times as wide one way as the other: it is no flat square to the load, and the cap formula is wrong for it.`,
      next: 'Take a profile through the scar, or look for debris that rounds its edge.',
    })
  }
  if (gap !== null && gap.depth.low > 0 && !gap.clear) {
    remarks.push({
      kind: 'wearMayBeDrift',
      seen: gap.depth.value,
      limit: gap.drift.growth,
      unit: 'm',
      sentence: `The gap fell by ${length(gap.depth.value)}; one kelvin of growth makes ${length(gap.drift.growth)}.`,
      next: 'Hold the temperature, run a blank of the same length without sliding, or read the scars.',
    })
  }
  if (moved.verdict === 'yes' && moved.pressure !== null) {
    remarks.push({
      kind: 'pressureMoved',
      seen: 1 - moved.pressure.value,
      limit: pressureLimit,
      unit: '',
      sentence: `Wear took ${percent(1 - moved.pressure.value)} of the pressure between the first and the last step.`,
      next: 'Run in before the sweep, shorten the path, or take fresh balls more often.',
    })
  }
  return remarks
}
