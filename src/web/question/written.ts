import { printQuantity } from '../../core/quantity/index.ts'
import { questionKey } from './questionKeys.ts'

/** A quantity as the paper writes it. */
export function written(path: string, value: number): string {
  const { dimension, unit, scale = 1, name } = questionKey(path)
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be finite, got ${value}`)
  return printQuantity(value / scale, dimension, { digits: 6, unit })
}
