import { type ReactNode, useRef, useState } from 'react'
import { type Dimension, printQuantity } from '../../core/quantity/index.ts'
import { QuantityField } from './QuantityField.tsx'

interface UnsaidQuantityProps {
  readonly name: string
  readonly dimension: Dimension
  readonly least: number
  readonly most: number
  readonly change: (value: number, text?: string) => void
}

/** A quantity that nobody has said and nothing is assumed for: a place to say it. */
export function UnsaidQuantity({ name, dimension, least, most, change }: UnsaidQuantityProps): ReactNode {
  const [open, setOpen] = useState(false)
  const place = useRef<HTMLButtonElement>(null)
  if (!open) {
    return (
      <button
        ref={place}
        type="button"
        className="wording assumed"
        title={`${name}: click to say it`}
        aria-label={`${name}: not said`}
        onClick={() => setOpen(true)}
      >
        not said
      </button>
    )
  }
  const leave = (how: 'keys' | 'away'): void => {
    setOpen(false)
    if (how === 'keys') requestAnimationFrame(() => place.current?.focus())
  }
  const middle = Math.sqrt(Math.max(least, 1e-9) * Math.min(most, 1e9))
  const print = (value: number): string => printQuantity(value, dimension, { digits: 4 })
  return (
    <QuantityField
      name={name}
      value={middle}
      dimension={dimension}
      least={least}
      most={most}
      start=""
      print={print}
      how={{ by: 'log', size: middle, least, most }}
      change={change}
      leave={leave}
    />
  )
}
