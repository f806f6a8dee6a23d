/** Curves on one grid: for each sample its replicates, for each replicate its value at each place. */
export type SampleCurves = readonly (readonly ArrayLike<number>[])[]

/** Means of samples and the scatter that their replicates share, place by place. */
export interface CurveScatter {
  readonly counts: readonly number[]
  readonly places: number
  readonly means: readonly Float64Array[]
  /** Each replicate less the mean of its sample, sample after sample. */
  readonly residuals: readonly Float64Array[]
  /** Pooled standard deviation between replicates at each place. */
  readonly deviation: Float64Array
  /** Replicates less samples. */
  readonly degreesOfFreedom: number
}

/** Throws RangeError where a curve is missing or of another length, or where no sample has two replicates. */
export function curveScatter(samples: SampleCurves): CurveScatter {
  const places = samples[0]?.[0]?.length ?? 0
  const counts = samples.map((curves) => curves.length)
  const degreesOfFreedom = counts.reduce((sum, count) => sum + count - 1, 0)
  if (!(places >= 1 && counts.every((count) => count >= 1) && degreesOfFreedom >= 1)) {
    throw new RangeError(`scatter needs curves with places and a sample of two replicates, got counts ${counts}`)
  }
  for (const curve of samples.flat()) {
    if (curve.length !== places) throw new RangeError(`curves must all have ${places} places, got ${curve.length}`)
  }
  const means = samples.map((curves) => meanCurve(curves, places))
  const residuals = samples.flatMap((curves, s) =>
    curves.map((curve) => Float64Array.from(curve, (value, i) => value - means[s][i])),
  )
  const deviation = new Float64Array(places)
  for (const residual of residuals) for (let i = 0; i < places; i++) deviation[i] += residual[i] * residual[i]
  for (let i = 0; i < places; i++) deviation[i] = Math.sqrt(deviation[i] / degreesOfFreedom)
  return { counts, places, means, residuals, deviation, degreesOfFreedom }
}

/** Mean about the first curve, which costs no digits where all are alike. */
function meanCurve(curves: readonly ArrayLike<number>[], places: number): Float64Array {
  const mean = new Float64Array(places)
  for (let i = 0; i < places; i++) {
    let shift = 0
    for (const curve of curves) shift += curve[i] - curves[0][i]
    mean[i] = curves[0][i] + shift / curves.length
  }
  return mean
}
