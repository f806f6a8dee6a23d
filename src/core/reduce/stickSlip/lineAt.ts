/** Amplitude of a wave of one frequency in a series. */
export interface SpectralLine {
  readonly amplitude: number
  /** Standard deviation of what the wave leaves over, times √(2/n): the amplitude that noise alone would make. */
  readonly noise: number
}

/** Amplitude of a wave of `frequency` Hz in a series whose mean is taken off first. */
export function lineAt(series: Float64Array, time: Float64Array, frequency: number): SpectralLine {
  const count = series.length
  if (!(count >= 4)) throw new RangeError(`series must have 4 rows or more, got ${count}`)
  const mean = series.reduce((a, b) => a + b, 0) / count
  let cosine = 0
  let sine = 0
  for (let i = 0; i < count; i++) {
    const angle = 2 * Math.PI * frequency * (time[i] - time[0])
    cosine += (series[i] - mean) * Math.cos(angle)
    sine += (series[i] - mean) * Math.sin(angle)
  }
  const amplitude = (2 / count) * Math.hypot(cosine, sine)
  const squares = series.reduce((sum, value) => sum + (value - mean) ** 2, 0) / count
  const left = Math.max(0, squares - amplitude ** 2 / 2)
  return { amplitude, noise: Math.sqrt((2 * left) / count) }
}
