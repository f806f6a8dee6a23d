import { element, escaped, type Markup } from './markup.ts'

export const sizes = { title: 17, text: 12.5, small: 11.5 } as const

interface Lettering {
  readonly x: number
  readonly y: number
  readonly fill: string
  readonly size?: number
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly weight?: number
  readonly italic?: boolean
  readonly turn?: number
}

/** One line of words; `y` is the base line. */
export const lettering = (text: string, how: Lettering): Markup =>
  element(
    'text',
    {
      x: how.x,
      y: how.y,
      fill: how.fill,
      'font-size': how.size ?? sizes.text,
      'text-anchor': how.anchor === 'start' ? undefined : how.anchor,
      'font-weight': how.weight,
      'font-style': how.italic === true ? 'italic' : undefined,
      transform: how.turn === undefined ? undefined : `rotate(${how.turn} ${how.x} ${how.y})`,
    },
    escaped(text),
  )
