/** Rows `from` to `to` of one signal. `room` gives an array that may be used for them, where a new one must not be made. */
export type Reader = (from: number, to: number, room?: () => Float64Array) => Float64Array

/** Rows between start values that are kept. */
const pageRows = 16_384

/**
 * Angle as the running integral of the speed (trapezoids), kept as one start value a page so that long records need
 * no column of their own. Time that restarts at a step adds nothing.
 */
export function integratedAngle(rows: number, time: Reader, speed: Reader): Reader {
  const starts: number[] = [0]
  const longest = Math.min(rows, pageRows)
  // One row more, so that pages join without a seam.
  const [timeRoom, speedRoom] = [new Float64Array(longest + 1), new Float64Array(longest + 1)]
  const angle = new Float64Array(longest)
  let loaded = -1
  const load = (index: number): void => {
    const from = index * pageRows
    const to = Math.min(rows, from + pageRows)
    const back = from === 0 ? 0 : 1
    const t = time(from - back, to, () => timeRoom)
    const w = speed(from - back, to, () => speedRoom)
    let sum = starts[index]
    for (let i = 0; i < to - from; i++) {
      const j = i + back
      if (j > 0) sum += Math.max(0, t[j] - t[j - 1]) * 0.5 * (w[j] + w[j - 1])
      angle[i] = sum
    }
    starts[index + 1] = sum
    loaded = index
  }
  return (from, to, room) => {
    const out = room === undefined ? new Float64Array(to - from) : room().subarray(0, to - from)
    const first = Math.floor(from / pageRows)
    for (let index = starts.length - 1; index < first; index++) load(index)
    for (let index = first; index * pageRows < to; index++) {
      if (loaded !== index) load(index)
      const start = index * pageRows
      out.set(angle.subarray(Math.max(0, from - start), to - start), Math.max(start, from) - from)
    }
    return out
  }
}
