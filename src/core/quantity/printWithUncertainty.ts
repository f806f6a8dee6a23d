import type { Dimension } from './dimension.ts'
import { plainText, readableUnit } from './printQuantity.ts'
import { fromSi } from './toSi.ts'

/**
 * `12.340 ± 0.053`: the uncertainty gets two significant digits and decides those of the value (JCGM 100:2008, 7.2.6).
 * An uncertainty of zero prints the value as it stands. Throws RangeError for NaN, infinities and u < 0.
 */
export function printWithUncertainty(value: number, uncertainty: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`value must be finite to be printed, got ${value}`)
  if (!(uncertainty >= 0 && uncertainty < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`uncertainty must be finite and zero or more, got ${uncertainty}`)
  }
  if (uncertainty === 0) return `${plainText(value)} ± 0`
  const rounded = Number(uncertainty.toPrecision(2))
  const size = Math.max(Math.abs(value), rounded)
  if (size >= 1e6 || size < 1e-4) {
    const power = Math.floor(Math.log10(size))
    return `(${aligned(value / 10 ** power, rounded / 10 ** power)})e${power}`
  }
  return aligned(value, rounded)
}

/** The same in the most readable unit of a dimension: `5.034 ± 0.012 mN·m`. */
export function printMeasured(value: number, uncertainty: number, dimension: Dimension): string {
  const unit = readableUnit(value, dimension)
  const inverse = fromSi(uncertainty, { ...unit, offset: 0 })
  const text = printWithUncertainty(fromSi(value, unit), inverse)
  return unit.text === '1' ? text : `(${text}) ${unit.text}`
}

function aligned(value: number, uncertainty: number): string {
  const lastDigit = Math.floor(Math.log10(Number(uncertainty.toPrecision(2)))) - 1
  if (lastDigit >= 0) {
    const step = 10 ** lastDigit
    return `${Math.round(value / step) * step + 0} ± ${Math.round(uncertainty / step) * step}`
  }
  const text = value.toFixed(Math.min(100, -lastDigit))
  return `${Number(text) === 0 ? text.replace('-', '') : text} ± ${uncertainty.toFixed(Math.min(100, -lastDigit))}`
}
