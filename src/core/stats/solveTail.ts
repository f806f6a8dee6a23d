/** Logarithm of a tail probability at some place z, the size of its slope by z, and the slope of the log density. */
export interface TailAt {
  readonly logTail: number
  readonly slope: number
  readonly bend: number
}

/**
 * Place z at which the logarithm of a lower tail (rising in z) or an upper tail (falling) equals `logTarget`.
 * For the distributions here, with z the logarithm of a beta odds or of a gamma variable, the log tail is concave in z:
 * Newton steps converge from any start and Halley's third-order steps in two or three from a fair one. Works on
 * logarithms so that nothing underflows on the way.
 */
export function solveTail(
  side: 'lower' | 'upper',
  logTarget: number,
  { start, evaluate }: { readonly start: number; readonly evaluate: (z: number) => TailAt },
): number {
  let z = start
  for (let i = 0; i < 200; i++) {
    const { logTail, slope, bend } = evaluate(z)
    const signed = side === 'lower' ? slope : -slope
    const gap = logTail - logTarget
    const newton = gap / signed
    const halley = 1 - 0.5 * newton * (bend - signed)
    const step = halley > 0.5 && halley < 2 ? newton / halley : newton
    // Far out in the wrong tail the slope vanishes; a long stride is then enough, as the log tail is concave.
    z -= Math.abs(step) <= 20 ? step : 20 * Math.sign(gap) * (side === 'lower' ? 1 : -1)
    if (Math.abs(gap) <= 1e-5 && Math.abs(step) <= 1e-4) return z
  }
  throw new RangeError(`no quantile found for log tail ${logTarget} from ${start}`)
}
