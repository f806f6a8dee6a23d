import { InvalidArgumentError } from 'commander'
import type { MovedWindow } from '../core/terms/index.ts'

/** Reads `STEP=FROM..TO`, seconds on the clock of the record, and adds it to those that were said before. */
export function movedWindowOption(text: string, before: readonly MovedWindow[] | false | undefined): MovedWindow[] {
  const found = /^(-?\d+)=([\d.eE+-]+)\.\.([\d.eE+-]+)$/.exec(text.trim())
  const [step, from, to] = (found?.slice(1) ?? []).map(Number)
  if (!(Number.isSafeInteger(step) && Number.isFinite(from) && to > from)) {
    throw new InvalidArgumentError('Write STEP=FROM..TO in seconds, such as 3=12.5..20.')
  }
  return [...(before || []), { from, step, to }]
}
