/** How far a value goes with one press of an arrow, one pixel of a drag. */
export interface Stepping {
  /** `log`: each step a share of the value, as for speeds and loads. `even`: the same step everywhere. */
  readonly by: 'log' | 'even'
  /** Size of an even step, SI. */
  readonly size: number
  readonly least: number
  readonly most: number
}

const held = (value: number, { least, most }: Stepping): number => Math.min(most, Math.max(least, value))

/** Mantissas that an arrow visits: people think in 1, 2, 5 and what lies between. */
const ladder = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8] as const

/** The value `count` steps further; a log step goes to the next round number. */
export function stepped(value: number, count: number, how: Stepping): number {
  if (how.by === 'even') return held(Number((value + count * how.size).toPrecision(12)), how)
  if (!(value > 0)) return held(how.size, how)
  let place = rung(value)
  const between = Math.abs(place - Math.round(place)) > 1e-6
  for (let left = Math.abs(count); left > 0; left--) {
    if (between && left === Math.abs(count)) place = count > 0 ? Math.ceil(place) : Math.floor(place)
    else place = Math.round(place) + Math.sign(count)
  }
  return held(atRung(Math.round(place)), how)
}

/** Place of a value on the ladder that goes on over all decades; a fraction between two rungs. */
function rung(value: number): number {
  const decade = Math.floor(Math.log10(value) + 1e-12)
  const mantissa = value / 10 ** decade
  const after = ladder.findIndex((one) => one > mantissa * (1 + 1e-9))
  const low = after === -1 ? ladder.length - 1 : after - 1
  const share = (mantissa - ladder[low]) / ((after === -1 ? 10 : ladder[after]) - ladder[low])
  return decade * ladder.length + low + (share < 1e-6 ? 0 : share)
}

function atRung(place: number): number {
  const decade = Math.floor(place / ladder.length)
  return Number(`${ladder[place - decade * ladder.length]}e${decade}`)
}

/** The value after a drag of so many pixels: 230 pixels make a decade, or 100 even steps; two to three digits. */
export function dragged(value: number, pixels: number, how: Stepping): number {
  if (how.by === 'even') return held(Number((value + Math.round(pixels / 4) * how.size).toPrecision(12)), how)
  const start = value > 0 ? value : how.size
  return held(Number((start * Math.exp(pixels / 100)).toPrecision(pixels === 0 ? 12 : 2)), how)
}
