import { type Dimension, fromSi, readableUnit } from '../../core/quantity/index.ts'
import type { Remark, RemarkKind } from '../../core/terms/index.ts'
import { tickLabel } from '../ticks.ts'

/** Kinds whose plain number is a share, printed in per cent; plain numbers of other kinds are counts and turns. */
const shares: ReadonlySet<RemarkKind> = new Set([
  'forceOffTarget',
  'notSteady',
  'forceRipple',
  'frictionRipple',
  'stickSlip',
  'speedNotReached',
  'windUp',
  'inertia',
  'drag',
  'forceZeroDrift',
  'directionsDiffer',
  'notRunIn',
])

const dimensionOf: Readonly<Record<string, Dimension>> = {
  N: 'force',
  N·m: 'torque',
  m: 'length',
  'm/s': 'velocity',
  K: 'temperatureDifference',
  s: 'time',
}

/** What counts are counts of. */
const counted: Readonly<Partial<Record<RemarkKind, string>>> = {
  underOneTurn: 'turns',
  tooFewSamples: 'rows',
  torqueAtCeiling: 'rows',
}

/** The numbers of all remarks of one kind in one unit, two digits each. */
export interface RemarkNumbers {
  readonly print: (value: number) => string
  /** "35 to 43 µN·m". */
  readonly seen: string
  readonly limit: string
}

export function remarkNumbers(remarks: readonly Remark[]): RemarkNumbers {
  const [first] = remarks
  const { print, unit } = first === undefined ? plain('') : printerOf(first, remarks)
  const range = (values: readonly number[]): string => {
    const [low, high] = [Math.min(...values), Math.max(...values)].map(print)
    const noun = low === '1' && high === '1' ? unit.replace(/(turn|row)s$/, '$1') : unit
    return [low === high ? low : `${low} to ${high}`, noun].filter((piece) => piece !== '').join(' ')
  }
  return { print, seen: range(remarks.map(({ seen }) => seen)), limit: range(remarks.map(({ limit }) => limit)) }
}

interface Printer {
  readonly print: (value: number) => string
  readonly unit: string
}

const twoDigits = (value: number): string => (Number.isFinite(value) ? tickLabel(Number(value.toPrecision(2))) : '–')

const plain = (unit: string): Printer => ({ print: twoDigits, unit })

function printerOf({ kind, unit }: Remark, remarks: readonly Remark[]): Printer {
  if (shares.has(kind)) return { print: (value) => twoDigits(100 * value), unit: '%' }
  const dimension = dimensionOf[unit]
  if (dimension === undefined) return plain(counted[kind] ?? unit)
  const largest = Math.max(...remarks.map(({ seen }) => Math.abs(seen)).filter(Number.isFinite), 0)
  const readable = readableUnit(largest, dimension)
  return { print: (value) => twoDigits(fromSi(value, readable)), unit: readable.text }
}
