import { lettering, sizes } from './lettering.ts'
import { element, escaped, type Markup } from './markup.ts'
import { type Palette, type PaletteName, palettes } from './palette.ts'
import { fitted, wrapped } from './textWidth.ts'

/** Fonts by wish; every one of them has tabular figures. */
const fonts = "'Source Sans 3', 'Noto Sans', 'DejaVu Sans', system-ui, sans-serif"

/** What every part of a figure needs to know of the whole. */
export interface Sheet {
  readonly palette: Palette
  readonly id: string
  readonly width: number
}

/** What can be asked of any figure. */
export interface SheetOptions {
  readonly palette: PaletteName
  /** Width of the whole figure in pixels, 480 to 2000. The height follows from what there is to say. */
  readonly width: number
  /** Start of every id in the picture; has to differ between figures on one page. */
  readonly id: string
}

/** Throws RangeError for a width that no figure is made for. */
export function sheetOf({ palette, width, id }: SheetOptions): Sheet {
  if (!(width >= 480 && width <= 2000)) throw new RangeError(`width must be 480 to 2000 px, got ${width} px`)
  return { palette: palettes[palette], id, width }
}

/** A box in pixels. */
export interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** A piece of a figure below another, with the height that it took. */
export interface Block {
  readonly markup: Markup
  readonly height: number
}

/** Words about a whole figure. */
export interface Words {
  readonly title: string
  /** A quiet line below the title. */
  readonly caption?: string
  /** A line at the foot, such as that the data are invented. */
  readonly note?: string
}

export function heading({ title, caption }: Words, { palette, width }: Sheet): Block {
  const head = lettering(fitted(title, sizes.title, width - 32), {
    x: 16,
    y: 28,
    fill: palette.ink,
    size: sizes.title,
    weight: 600,
  })
  if (caption === undefined) return { markup: head, height: 40 }
  const line = lettering(fitted(caption, sizes.text, width - 32), { x: 16, y: 48, fill: palette.quiet })
  return { markup: head + line, height: 60 }
}

export function footNote({ note }: Words, at: { readonly left: number; readonly top: number }, sheet: Sheet): Block {
  const lines = wrapped(note ?? '', sizes.small, sheet.width - at.left - 16).map((line, index) =>
    lettering(line, {
      x: at.left,
      y: at.top + 14 + 16 * index,
      fill: sheet.palette.quiet,
      size: sizes.small,
      italic: true,
    }),
  )
  return { markup: lines.join(''), height: 16 * lines.length }
}

interface Picture {
  readonly sheet: Sheet
  readonly title: string
  /** The figure in words, for people who hear it. */
  readonly words: string
  readonly height: number
  readonly defs?: readonly Markup[]
  readonly body: readonly Markup[]
}

export function picture({ sheet, title, words, height, defs = [], body }: Picture): Markup {
  const { id, width, palette } = sheet
  return `${element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      'font-family': fonts,
      style: 'font-variant-numeric: tabular-nums',
    },
    element('title', { id: `${id}-title` }, escaped(title)),
    element('desc', { id: `${id}-desc` }, escaped(words)),
    ...(defs.length === 0 ? [] : [element('defs', {}, ...defs)]),
    element('rect', { width, height, fill: palette.paper }),
    ...body,
  )}\n`
}
