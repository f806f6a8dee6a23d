import { parseQuantity } from '../../core/quantity/index.ts'
import { done, failed, type Kelvin, type Outcome } from '../../core/terms/index.ts'

/** A temperature as people write it; undefined where none was wanted. */
export function wantedTemperature(text: string | undefined): Outcome<Kelvin | undefined> {
  if (text === undefined) return done(undefined)
  const parsed = parseQuantity(text, 'temperature')
  if (parsed.ok) return done(parsed.value)
  const { what, mend } = parsed
  return failed({
    kind: 'quantityUnreadable',
    class: 'wrongUse',
    place: { name: 'temperature', cell: text },
    what,
    mend,
  })
}
