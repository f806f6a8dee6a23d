import { parseQuantity } from '../quantity/index.ts'

/** The margin that a study's question names under `deciding`, as people write it ("15 %"); undefined where it names none. */
export function marginAsked(question: unknown): number | undefined {
  if (typeof question !== 'object' || question === null) return undefined
  const deciding: unknown = Reflect.get(question, 'deciding')
  if (typeof deciding !== 'object' || deciding === null) return undefined
  const text: unknown = Reflect.get(deciding, 'margin')
  const read = parseQuantity(String(text ?? ''), 'ratio')
  return read.ok && read.value > 0 ? read.value : undefined
}
