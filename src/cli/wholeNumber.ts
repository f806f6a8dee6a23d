import { InvalidArgumentError } from 'commander'

/** Reads an option that takes a whole number within bounds. */
export const wholeNumber =
  (least: number, most: number) =>
  (text: string): number => {
    const value = /^\d+$/.test(text) ? Number(text) : Number.NaN
    if (value >= least && value <= most) return value
    throw new InvalidArgumentError(`Write a whole number from ${least} to ${most}.`)
  }
