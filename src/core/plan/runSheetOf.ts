import { printQuantity } from '../quantity/index.ts'
import type { OrderedSheet, SheetPart } from '../terms/index.ts'
import { contactParts } from './contactParts.ts'
import type { Plan } from './planOf.ts'
import { readyParts } from './readyParts.ts'
import { sheetCautions, sheetForeword } from './sheetCautions.ts'
import { sweepParts } from './sweepParts.ts'

/** The run sheet of a plan: surfaces, mounting, zeroes, approach, conditioning, blank, sweep, after-checks, cleaning, change. */
export function runSheetOf(plan: Plan): OrderedSheet {
  const cautions = sheetCautions(plan)
  const parts = [...readyParts(plan, cautions), ...contactParts(plan, cautions), ...sweepParts(plan, cautions)]
  const total = (key: 'duration' | 'distance'): number =>
    parts.reduce((sum: number, { entries }: SheetPart) => entries.reduce((inner, one) => inner + one[key], sum), 0)
  const { question, suggestion, points } = plan
  const span = `${printQuantity(suggestion.slowest, 'velocity', { digits: 2 })} to ${printQuantity(suggestion.fastest, 'velocity', { digits: 2 })}`
  return {
    title: question.title,
    subtitle: `${question.pair.upper.name} on ${question.pair.lower.name}${question.liquid === undefined ? ', dry' : `, ${question.liquid.name}`}, ${printQuantity(suggestion.axialForce, 'force', { digits: 2 })}, ${span}`,
    foreword: sheetForeword,
    parts,
    sweep: points.map(({ step, slidingSpeed, angularVelocity, dwell, turns }) => ({
      step,
      slidingSpeed,
      angularVelocity,
      dwell,
      turns,
    })),
    totals: { time: total('duration'), distance: total('distance') },
  }
}
