import type { Dimension } from '../../core/quantity/index.ts'

/** A quantity in a sentence and what may become of it. */
export interface QuantityProps {
  /** What is changed, for the ear and the hint: "axial force". */
  readonly name: string
  /** SI. */
  readonly value: number
  readonly dimension: Dimension
  /** Allowed range, SI; said while editing. */
  readonly least: number
  readonly most: number
  /** A default that nobody has confirmed yet: lighter ink. */
  readonly assumed?: boolean
  /** Size of an even step; without it each step goes to the next round number. */
  readonly even?: number
  readonly digits?: number
  /** Print in this unit always. */
  readonly unit?: string
  /** As somebody typed it, where that is worth keeping; without it the most readable unit. */
  readonly text?: string
  /** Words around the number: (three) => "three", such as a count in letters. */
  readonly spell?: (value: number) => string
  /** A reason why this value cannot be, though it lies in the range. */
  readonly refuse?: (value: number) => string | undefined
  /** A value that a person settled on, with the text that was typed. Confirming a default gives the value that stood there. */
  readonly change: (value: number, text?: string) => void
  /** The value under a moving hand, for pictures to follow; undefined when the hand leaves. Without it there is no drag. */
  readonly preview?: (value: number | undefined) => void
}
