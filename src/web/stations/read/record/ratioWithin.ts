import type { StepAnswer } from '../../../../server/contract/index.ts'

/**
 * Mean tangential over mean axial force of the rows between two times: near enough to follow a hand; the kept value comes from
 * the whole reduction. undefined without a row.
 */
export function ratioWithin(
  { time, friction, axialForce }: Pick<StepAnswer['rows'], 'time' | 'friction' | 'axialForce'>,
  { from, to }: { readonly from: number; readonly to: number },
): number | undefined {
  let tangential = 0
  let normal = 0
  for (let row = 0; row < time.length; row++) {
    const [value, force] = [friction[row], axialForce[row]]
    if (time[row] < from || time[row] > to || value === null || force === null) continue
    tangential += value * force
    normal += force
  }
  return normal > 0 ? tangential / normal : undefined
}
