// Aliases cost nothing at run time and let a signature say its unit.
// Quantities inside the program are always in these units; `core/quantity` alone converts.

export type Second = number
export type Metre = number
export type Radian = number
export type RadianPerSecond = number
export type MetrePerSecond = number
export type Newton = number
export type NewtonMetre = number
export type Pascal = number
export type PascalSecond = number
/** Absolute temperature. Differences of temperature are `Kelvin` too; setup fields say which is meant. */
export type Kelvin = number
export type KilogramMetreSquared = number
export type NewtonMetrePerRadian = number
/** A plain ratio: 0.05 means 5 %. */
export type Ratio = number
