// Aliases cost nothing at run time and let a signature say its unit.
// Quantities inside the program are always in these units; `core/quantity` alone converts.

/** s, from the start of the record unless said otherwise. */
export type Second = number
/** m. */
export type Metre = number
/** rad. */
export type Radian = number
/** rad/s. */
export type RadianPerSecond = number
/** m/s. */
export type MetrePerSecond = number
/** N. */
export type Newton = number
/** N·m, a torque. */
export type NewtonMetre = number
/** Pa. */
export type Pascal = number
/** Pa·s. */
export type PascalSecond = number
/** Absolute temperature. Differences of temperature are `Kelvin` too; setup fields say which is meant. */
export type Kelvin = number
/** kg·m². */
export type KilogramMetreSquared = number
/** N·m/rad. */
export type NewtonMetrePerRadian = number
/** A plain ratio: 0.05 means 5 %. */
export type Ratio = number
