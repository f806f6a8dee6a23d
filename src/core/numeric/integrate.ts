/** An integral with an estimate of its error, and why the refinement stopped. */
export interface Integral {
  readonly value: number
  /** Sum of the differences between the two rules; usually far above the true error. */
  readonly error: number
  readonly evaluations: number
  readonly end: 'converged' | 'pieceLimit'
}

// Gauss–Kronrod pair of 7 and 15 points (Piessens et al. 1983, QUADPACK), from the middle outwards.
const nodes = [
  0, 0.20778495500789848, 0.4058451513773972, 0.5860872354676911, 0.7415311855993945, 0.8648644233597691,
  0.9491079123427585, 0.9914553711208126,
]
const kronrod = [
  0.20948214108472782, 0.20443294007529889, 0.19035057806478542, 0.1690047266392679, 0.14065325971552592,
  0.10479001032225019, 0.06309209262997856, 0.022935322010529224,
]
/** At every second node. */
const gauss = [0.4179591836734694, 0.3818300505051189, 0.27970539148927664, 0.1294849661688697]

interface Piece {
  readonly low: number
  readonly high: number
  readonly value: number
  readonly error: number
}

/**
 * ∫ f from `low` to `high`, both finite, halving the worst piece until the error estimate keeps to the larger of the two
 * tolerances. Ends are never evaluated, so that an integrable singularity there does no harm. A feature narrower than a
 * tenth of the range may lie unseen between the first 15 places: split the range there.
 */
export function integrate(
  f: (x: number) => number,
  [low, high]: readonly [low: number, high: number],
  {
    relative = 1e-10,
    absolute = 0,
    mostPieces = 500,
  }: {
    readonly relative?: number
    readonly absolute?: number
    readonly mostPieces?: number
  } = {},
): Integral {
  if (!Number.isFinite(high - low)) throw new RangeError(`range must be finite, got ${low} to ${high}`)
  const pieces = [pieceOf(f, low, high)]
  for (;;) {
    const value = pieces.reduce((sum, piece) => sum + piece.value, 0)
    const error = pieces.reduce((sum, piece) => sum + piece.error, 0)
    const evaluations = 15 * (2 * pieces.length - 1)
    if (Number.isNaN(value)) throw new RangeError(`the function is not a number between ${low} and ${high}`)
    // Rounding of the sum itself is no reason to go on.
    const enough = Math.max(absolute, relative * Math.abs(value), 1e-15 * Math.abs(value))
    if (error <= enough) return { value, error, evaluations, end: 'converged' }
    if (pieces.length >= mostPieces) return { value, error, evaluations, end: 'pieceLimit' }
    halveWorst(f, pieces)
  }
}

function halveWorst(f: (x: number) => number, pieces: Piece[]): void {
  let worst = 0
  for (let i = 1; i < pieces.length; i++) if (pieces[i].error > pieces[worst].error) worst = i
  const { low, high } = pieces[worst]
  const middle = (low + high) / 2
  pieces[worst] = pieceOf(f, low, middle)
  pieces.push(pieceOf(f, middle, high))
}

function pieceOf(f: (x: number) => number, low: number, high: number): Piece {
  const centre = (low + high) / 2
  const half = (high - low) / 2
  const middle = f(centre)
  let fine = kronrod[0] * middle
  let coarse = gauss[0] * middle
  for (let i = 1; i < nodes.length; i++) {
    const pair = f(centre - half * nodes[i]) + f(centre + half * nodes[i])
    fine += kronrod[i] * pair
    if (i % 2 === 0) coarse += gauss[i / 2] * pair
  }
  return { low, high, value: half * fine, error: Math.abs(half * (fine - coarse)) }
}
