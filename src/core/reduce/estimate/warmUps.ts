import { mean } from '../../stats/index.ts'
import { fewestKept, type Learned } from './learned.ts'
import { noiseShape } from './noiseShape.ts'
import { pooledRipple } from './recordRipple.ts'
import type { StepRows } from './stepRows.ts'
import { warmUpCut } from './warmUpCut.ts'

/**
 * Rows to cut after `starts` in each step. Friction is looked at with the record's ripple taken off; how much a head of
 * it may differ by chance follows from the noise of the rows after `late`, of all steps together.
 */
export function warmUps(
  all: readonly StepRows[],
  { starts, late, first }: { starts: readonly number[]; late: readonly number[]; first: Learned },
): number[] {
  const series = all.map((rows, s) => rippleFree(rows, starts[s], { first, index: s }))
  const quiet = series.flatMap((values, s) =>
    values.length === 0 ? [] : [centred(values.subarray(late[s] - starts[s]))],
  )
  const shape = noiseShape(quiet.filter((values) => values.length >= fewestKept))
  const independent =
    shape === undefined
      ? 0
      : quiet.reduce((sum, values) => sum + values.length / shape.inflation(values.length).mean, 0)
  return series.map((values) =>
    values.length < 4 * fewestKept ? 0 : warmUpCut(values, (rows) => shape?.inflation(rows).mean ?? 1, independent),
  )
}

const centred = (values: Float64Array): Float64Array => {
  const level = values.length === 0 ? 0 : mean(values)
  return values.map((value) => value - level)
}

/** Tangential − µ·force over the turn's mean force, less what the record shows of its ripple. */
function rippleFree(rows: StepRows, from: number, { first, index }: { first: Learned; index: number }): Float64Array {
  const products = first.products[index]
  if (products === undefined) return new Float64Array(0)
  const friction = products.plainFriction
  const scale = first.ripple.scale === 'relative' ? friction : 1
  const turns = first.ripple.orders.flatMap((order) => {
    const measured = first.ripple.measured.find((ripple) => ripple.order === order)
    const pooled = measured && pooledRipple(measured, first.usable, { scale: first.ripple.scale })
    const at = 2 * rows.orders.indexOf(order)
    return pooled === undefined ? [] : [{ ...pooled, cosines: rows.turnColumns[at], sines: rows.turnColumns[at + 1] }]
  })
  const series = new Float64Array(rows.force.length - from)
  for (let i = 0; i < series.length; i++) {
    const row = from + i
    let value = (rows.tangential[row] - friction * rows.force[row]) / products.turnForce
    for (const { cosine, sine, cosines, sines } of turns) value -= scale * (cosine * cosines[row] + sine * sines[row])
    series[i] = value
  }
  return series
}
