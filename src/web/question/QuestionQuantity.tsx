import type { ReactNode } from 'react'
import { printQuantity } from '../../core/quantity/index.ts'
import { Quantity } from '../sentence/Quantity.tsx'
import { UnsaidQuantity } from '../sentence/UnsaidQuantity.tsx'
import { questionKey } from './questionKeys.ts'
import { quantityAt } from './readPaper.ts'
import type { QuestionHold } from './useQuestion.ts'

interface QuestionQuantityProps {
  readonly hold: QuestionHold
  readonly path: string
  /** What the tables or the plan take where nobody said anything; printed as a default. */
  readonly filled?: number
  /** Where the rig or another value allows less than the key does. */
  readonly least?: number
  readonly most?: number
  readonly spell?: (value: number) => string
  readonly refuse?: (value: number) => string | undefined
}

/** A quantity of the question in a sentence. */
export function QuestionQuantity({ hold, path, filled, least, most, spell, refuse }: QuestionQuantityProps): ReactNode {
  const key = questionKey(path)
  const { name, dimension, even, unit, scale = 1 } = key
  const text = hold.text(path)
  const value = hold.value(path) ?? filled
  const range = { least: (least ?? key.least) / scale, most: (most ?? key.most) / scale }
  const asTyped = text === undefined ? undefined : quantityAt(path, text)
  // Whoever confirms a value keeps it as it was typed.
  const change = (next: number, typed?: string): void =>
    hold.set(path, next * scale, typed ?? (asTyped?.ok === true && next * scale === asTyped.value ? text : undefined))
  if (value === undefined) return <UnsaidQuantity name={name} dimension={dimension} {...range} change={change} />
  const same = asTyped?.ok === true && asTyped.value === value
  const preview = even === undefined || dimension !== 'count'
  return (
    <Quantity
      name={name}
      value={value / scale}
      dimension={dimension}
      {...range}
      even={even}
      unit={unit}
      text={same && text !== undefined ? readable(path, value, text) : undefined}
      assumed={hold.assumed(path)}
      spell={spell}
      refuse={refuse}
      change={change}
      preview={preview ? (next) => hold.preview(path, next === undefined ? undefined : next * scale) : undefined}
    />
  )
}

/** As typed, with the blank and the signs that print demands; a typed number with many digits stays as it is. */
function readable(path: string, value: number, text: string): string {
  const { dimension, unit, scale = 1 } = questionKey(path)
  const printed = printQuantity(value / scale, dimension, { digits: 6, unit })
  return unit !== undefined ? printed : text.replace(/(\d)\s*([a-zµ°%])/i, dimension === 'angle' ? '$1$2' : '$1 $2')
}
