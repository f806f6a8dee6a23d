/** Rows `from` to `to` of one signal. `room` gives an array that may be used for them, where a new one must not be made. */
export type Reader = (from: number, to: number, room?: () => Float64Array) => Float64Array

/** Rows between start values that are kept. */
const pageRows = 65_536

/**
 * Angle as the running integral of the speed (trapezoids), kept as one start value a page so that long records need
 * no column of their own. Time that restarts at a step adds nothing.
 */
export function integratedAngle(rows: number, time: Reader, speed: Reader): Reader {
  const starts: number[] = [0]
  const page = (index: number): Float64Array => {
    const from = index * pageRows
    const to = Math.min(rows, from + pageRows)
    // One row before, so that pages join without a seam.
    const back = from === 0 ? 0 : 1
    const t = time(from - back, to)
    const w = speed(from - back, to)
    const angle = new Float64Array(to - from)
    let sum = starts[index]
    for (let i = 0; i < angle.length; i++) {
      const j = i + back
      if (j > 0) sum += Math.max(0, t[j] - t[j - 1]) * 0.5 * (w[j] + w[j - 1])
      angle[i] = sum
    }
    starts[index + 1] = sum
    return angle
  }
  let last: { index: number; angle: Float64Array } = { index: -1, angle: new Float64Array(0) }
  const cached = (index: number) => {
    if (last.index !== index) last = { index, angle: page(index) }
    return last.angle
  }
  return (from, to, room) => {
    const out = room === undefined ? new Float64Array(to - from) : room().subarray(0, to - from)
    const first = Math.floor(from / pageRows)
    for (let index = starts.length - 1; index < first; index++) page(index)
    for (let index = first; index * pageRows < to; index++) {
      const start = index * pageRows
      const part = cached(index).subarray(Math.max(0, from - start), to - start)
      out.set(part, Math.max(start, from) - from)
    }
    return out
  }
}
