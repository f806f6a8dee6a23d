// Rational approximations of W. J. Cody 1969 (Math. Comp. 23:631), relative error under 1e-15 over the whole line.
const a = [3.1611237438705655, 113.86415415105016, 377.485237685302, 3209.3775891384694, 0.18577770618460315]
const b = [23.601290952344122, 244.02463793444417, 1282.6165260773723, 2844.236833439171]
const c = [
  0.5641884969886701, 8.883149794388377, 66.11919063714163, 298.6351381974001, 881.952221241769, 1712.0476126340707,
  2051.0783778260716, 1230.3393547979972, 2.1531153547440383e-8,
]
const d = [
  15.744926110709835, 117.6939508913125, 537.1811018620099, 1621.3895745666903, 3290.7992357334597, 4362.619090143247,
  3439.3676741437216, 1230.3393548037495,
]
const p = [
  0.30532663496123236, 0.36034489994980445, 0.12578172611122926, 0.016083785148742275, 0.0006587491615298378,
  0.016315387137302097,
]
const q = [2.568520192289822, 1.8729528499234673, 0.5279051029514285, 0.06051834131244132, 0.0023352049762686918]
const inverseSqrtPi = 0.5641895835477563

/** Complementary error function, with full relative precision in the upper tail. */
export function erfc(x: number): number {
  const size = Math.abs(x)
  if (size <= 0.46875) return 1 - nearZero(x)
  const upper = size <= 4 ? middle(size) : far(size)
  return x < 0 ? 2 - upper : upper
}

/** Error function. */
export const erf = (x: number): number => (Math.abs(x) <= 0.46875 ? nearZero(x) : x < 0 ? erfc(-x) - 1 : 1 - erfc(x))

function nearZero(x: number): number {
  const z = x * x
  const top = (((a[4] * z + a[0]) * z + a[1]) * z + a[2]) * z + a[3]
  const bottom = (((z + b[0]) * z + b[1]) * z + b[2]) * z + b[3]
  return (x * top) / bottom
}

function middle(x: number): number {
  let top = c[8] * x
  let bottom = x
  for (let i = 0; i < 7; i++) {
    top = (top + c[i]) * x
    bottom = (bottom + d[i]) * x
  }
  return (gaussian(x) * (top + c[7])) / (bottom + d[7])
}

function far(x: number): number {
  if (!(x < 27)) return Number.isNaN(x) ? x : 0
  const z = 1 / (x * x)
  const top = ((((p[5] * z + p[0]) * z + p[1]) * z + p[2]) * z + p[3]) * z + p[4]
  const bottom = ((((z + q[0]) * z + q[1]) * z + q[2]) * z + q[3]) * z + q[4]
  return (gaussian(x) * (inverseSqrtPi - (z * top) / bottom)) / x
}

/** e^(−x²), with x split so that the square loses no digits. */
function gaussian(x: number): number {
  const near = Math.trunc(x * 16) / 16
  return Math.exp(-near * near) * Math.exp(-(x - near) * (x + near))
}
