import type { MetrePerSecond, Newton, Ratio, Second } from '../terms/index.ts'

/**
 * A mass dragged through a spring over a dry contact, with Coulomb friction that drops when it begins to move.
 * For a shaft of torsional stiffness κ and inertia J whose contact runs at lever r: stiffness κ/r², mass J/r².
 */
export interface Oscillator {
  /** N/m */
  readonly stiffness: number
  /** kg */
  readonly mass: number
  /** Static less kinetic friction. */
  readonly forceDrop: Newton
  /** Share of critical damping, of the mass against the drive or the ground. */
  readonly dampingRatio: Ratio
}

/** Time at rest within one cycle: the spring gains twice the drop at the drive's speed. Undamped. Derived; CHECK 11-2. */
export const stickTime = (o: Oscillator, drive: MetrePerSecond): Second =>
  (2 * checked(o).forceDrop) / (o.stiffness * checkedDrive(drive))

/** Time in motion within one cycle, undamped: (2/ω)(π − atan(ΔF/(v√(km)))). */
export function slipTime(o: Oscillator, drive: MetrePerSecond): Second {
  const impedance = Math.sqrt(checked(o).stiffness * o.mass)
  const natural = Math.sqrt(o.stiffness / o.mass)
  return (2 / natural) * (Math.PI - Math.atan2(o.forceDrop, checkedDrive(drive) * impedance))
}

/** Cycles per second, undamped. */
export const stickSlipFrequency = (o: Oscillator, drive: MetrePerSecond): number =>
  1 / (stickTime(o, drive) + slipTime(o, drive))

/** Natural frequency in cycles per second: √(k/m)/2π. */
export const naturalFrequency = (stiffness: number, mass: number): number => Math.sqrt(stiffness / mass) / (2 * Math.PI)

/**
 * Drive speed above which the contact no longer sticks: (ΔF/√(km))/√(e^(4πζ) − 1).
 * An estimate: a simulated oscillator at ζ = 0.05 sticks up to a speed 3 % higher. Infinite without damping.
 */
export const criticalSpeed = (o: Oscillator): MetrePerSecond =>
  checked(o).forceDrop / Math.sqrt(o.stiffness * o.mass) / Math.sqrt(Math.expm1(4 * Math.PI * o.dampingRatio))

/** The same for weak damping: ΔF/√(4πζkm). */
export const criticalSpeedWeakDamping = (o: Oscillator): MetrePerSecond =>
  checked(o).forceDrop / Math.sqrt(4 * Math.PI * o.dampingRatio * o.stiffness * o.mass)

/**
 * Spring force over one undamped cycle, as its deviation from kinetic friction in units of the drop: −1 … 1.
 * `phase` 0 … 1 begins with sticking. Its mean over a cycle is zero.
 */
export function springWave(o: Oscillator, drive: MetrePerSecond, phase: number): number {
  const stick = stickTime(o, drive)
  const slip = slipTime(o, drive)
  const t = phase * (stick + slip)
  if (t < stick) return (2 * t) / stick - 1
  const natural = Math.sqrt(o.stiffness / o.mass)
  const angle = natural * (t - stick)
  return Math.cos(angle) + ((drive * Math.sqrt(o.stiffness * o.mass)) / o.forceDrop) * Math.sin(angle)
}

function checked(o: Oscillator): Oscillator {
  if (!(o.stiffness > 0)) throw new RangeError(`stiffness must be positive, got ${o.stiffness} N/m`)
  if (!(o.mass > 0)) throw new RangeError(`mass must be positive, got ${o.mass} kg`)
  if (!(o.forceDrop > 0)) throw new RangeError(`forceDrop must be positive, got ${o.forceDrop} N`)
  if (!(o.dampingRatio >= 0)) throw new RangeError(`dampingRatio must be zero or more, got ${o.dampingRatio}`)
  return o
}

function checkedDrive(drive: MetrePerSecond): MetrePerSecond {
  if (!(drive > 0)) throw new RangeError(`drive must be positive, got ${drive} m/s`)
  return drive
}
