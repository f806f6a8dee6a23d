import { zigguratEdges, zigguratRatios, zigguratTail } from './ziggurat.ts'

/** Four 32-bit words, not all zero: the whole state of a generator. */
export type RandomState = readonly [number, number, number, number]

const rotate = (word: number, by: number): number => (word << by) | (word >>> (32 - by))

/** One step of SplitMix in 32 bits: Weyl increment, then the finaliser of MurmurHash3 (Steele, Lea & Flood 2014). */
function mix(word: number): number {
  let z = word | 0
  z = Math.imul(z ^ (z >>> 16), 0x85ebca6b)
  z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35)
  return z ^ (z >>> 16)
}

/**
 * Seeded generator xoshiro128** (Blackman & Vigna 2021, ACM Trans. Math. Softw. 47:36), period 2^128 − 1. Chance enters
 * the program through this object alone; the same state gives the same numbers on every machine.
 */
export class Random {
  private a: number
  private b: number
  private c: number
  private d: number

  constructor(state: RandomState) {
    if (!state.some((word) => (word | 0) !== 0)) throw new RangeError(`random state must not be all zero, got ${state}`)
    this.a = state[0] | 0
    this.b = state[1] | 0
    this.c = state[2] | 0
    this.d = state[3] | 0
  }

  /** The state, from which `new Random(state)` goes on with the same numbers. */
  get state(): RandomState {
    return [this.a, this.b, this.c, this.d]
  }

  /** 32 random bits as a signed integer. */
  bits(): number {
    const result = Math.imul(rotate(Math.imul(this.b, 5), 7), 9)
    const shifted = this.b << 9
    this.c ^= this.a
    this.d ^= this.b
    this.b ^= this.c
    this.a ^= this.d
    this.c ^= shifted
    this.d = rotate(this.d, 11)
    return result
  }

  /** Uniform in [0, 1), a multiple of 2^−53. */
  uniform(): number {
    return ((this.bits() >>> 5) * 67108864 + (this.bits() >>> 6)) / 9007199254740992
  }

  /** Uniform among 0 … below − 1, without bias (rejection). `below` is a whole number from 1 to 2^32. */
  integer(below: number): number {
    if (!(Number.isInteger(below) && below >= 1 && below <= 4294967296)) {
      throw new RangeError(`below must be a whole number from 1 to 2^32, got ${below}`)
    }
    const fair = 4294967296 - (4294967296 % below)
    let word = this.bits() >>> 0
    while (word >= fair) word = this.bits() >>> 0
    return word % below
  }

  /**
   * Standard normal by the ziggurat of Marsaglia & Tsang 2000 (J. Stat. Softw. 5:8) with 256 layers; layer and position
   * come from different bits, as Doornik 2005 asks, and the position has 53.
   */
  normal(): number {
    for (;;) {
      const low = this.bits()
      const layer = low & 255
      // 32 bits and sign from one word, 21 from the other: a multiple of 2^−52 in [−1, 1).
      const position = (this.bits() * 2097152 + (low >>> 11)) / 4503599627370496
      if (Math.abs(position) < zigguratRatios[layer]) return position * zigguratEdges[layer]
      if (layer === 0) return this.tail(position < 0 ? -1 : 1)
      const x = position * zigguratEdges[layer]
      const above = Math.exp(-0.5 * (zigguratEdges[layer] ** 2 - x * x))
      const below = Math.exp(-0.5 * (zigguratEdges[layer + 1] ** 2 - x * x))
      if (above + this.uniform() * (below - above) < 1) return x
    }
  }

  /** Fills `out` with standard normals and returns it. */
  fillNormal(out: Float64Array): Float64Array {
    for (let i = 0; i < out.length; i++) out[i] = this.normal()
    return out
  }

  /** An independent stream; this one moves on, so that the next split gives another. */
  split(): Random {
    const high = this.bits()
    return seededState(high, this.bits(), this.bits())
  }

  /** Normal beyond the last layer (Marsaglia 1964). */
  private tail(sign: number): number {
    for (;;) {
      const x = Math.log(1 - this.uniform()) / zigguratTail
      const y = Math.log(1 - this.uniform())
      if (-2 * y >= x * x) return sign * (zigguratTail - x)
    }
  }
}

/** Generator for a seed (a safe integer, zero or more) and, for work that is shared out, the number of its stream. */
export function randomFrom(seed: number, stream = 0): Random {
  if (!(Number.isSafeInteger(seed) && seed >= 0)) throw new RangeError(`seed must be a safe integer ≥ 0, got ${seed}`)
  if (!(Number.isInteger(stream) && stream >= 0 && stream < 4294967296)) {
    throw new RangeError(`stream must be a whole number from 0 to 2^32 − 1, got ${stream}`)
  }
  return seededState(Math.floor(seed / 4294967296), seed % 4294967296, stream)
}

/** Folds three words into four by SplitMix; the rounds between them keep neighbouring seeds and streams apart. */
function seededState(high: number, low: number, stream: number): Random {
  let word = mix(mix(mix(high + 0x9e3779b9) + low) + stream)
  const next = (salt: number): number => {
    word = (word + 0x9e3779b9) | 0
    return mix(mix(word) ^ mix(salt))
  }
  return new Random([next(low), next(high + 0x51ed270b), next(stream + 0x2545f491), next(low ^ stream) | 1])
}
