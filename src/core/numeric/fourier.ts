/**
 * Discrete Fourier transform in place, Σ x[n] e^(−2πi kn/N), of a length that is a power of two (Cooley & Tukey 1965,
 * decimation in time, angles from a table so that errors grow with log N only).
 */
export function fourierTransform(real: Float64Array, imaginary: Float64Array): void {
  const size = real.length
  if (!(size >= 1 && (size & (size - 1)) === 0)) throw new RangeError(`length must be a power of two, got ${size}`)
  if (imaginary.length !== size) throw new RangeError(`imaginary part has ${imaginary.length} values, real has ${size}`)
  reverseBits(real, imaginary)
  const half = size >> 1
  const cosine = new Float64Array(half)
  const sine = new Float64Array(half)
  for (let k = 0; k < half; k++) {
    cosine[k] = Math.cos((2 * Math.PI * k) / size)
    sine[k] = -Math.sin((2 * Math.PI * k) / size)
  }
  for (let span = 1; span < size; span <<= 1) {
    const stride = half / span
    for (let start = 0; start < size; start += 2 * span) {
      for (let k = 0; k < span; k++) {
        const low = start + k
        const high = low + span
        const c = cosine[k * stride]
        const s = sine[k * stride]
        const re = real[high] * c - imaginary[high] * s
        const im = real[high] * s + imaginary[high] * c
        real[high] = real[low] - re
        imaginary[high] = imaginary[low] - im
        real[low] += re
        imaginary[low] += im
      }
    }
  }
}

/** Smallest power of two that is at least `count`. */
export function powerOfTwoFrom(count: number): number {
  let size = 1
  while (size < count) size *= 2
  return size
}

function reverseBits(real: Float64Array, imaginary: Float64Array): void {
  const size = real.length
  for (let i = 1, j = 0; i < size; i++) {
    let bit = size >> 1
    for (; j & bit; bit >>= 1) j ^= bit
    j ^= bit
    if (i < j) {
      const re = real[i]
      real[i] = real[j]
      real[j] = re
      const im = imaginary[i]
      imaginary[i] = imaginary[j]
      imaginary[j] = im
    }
  }
}
