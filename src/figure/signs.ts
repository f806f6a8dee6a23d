import { type Point, type RemarkKind, type RemarkWeight, remarkKinds, remarkWords } from '../core/terms/index.ts'
import { lettering } from './lettering.ts'
import { element, type Markup, rounded } from './markup.ts'
import type { Palette } from './palette.ts'

/** A kind of remark as this figure marks it: by letter, shape and colour, so that no meaning hangs on colour alone. */
export interface Sign {
  readonly kind: RemarkKind
  readonly letter: string
  readonly weight: RemarkWeight
  readonly steps: readonly number[]
  /** True where every point has it: then it stands in the key alone. */
  readonly everywhere: boolean
}

const weights: readonly RemarkWeight[] = ['stops', 'caution', 'note']

/** Signs for the remarks on the points, heaviest first, then in the order of `remarkKinds`. */
export function signsOf(points: readonly Point[]): readonly Sign[] {
  const steps = new Map<RemarkKind, Set<number>>()
  for (const point of points) {
    for (const remark of point.remarks) {
      const seen = steps.get(remark.kind) ?? new Set()
      steps.set(remark.kind, seen.add(point.step))
    }
  }
  const kinds = weights.flatMap((weight) =>
    remarkKinds.filter((kind) => steps.has(kind) && remarkWords[kind].weight === weight),
  )
  const all = new Set(points.map((point) => point.step)).size
  return kinds.map((kind, index) => {
    const found = [...(steps.get(kind) ?? [])].sort((a, b) => a - b)
    return {
      kind,
      letter: 'abcdefghijklmnopqrstuvwxyz'.charAt(index % 26),
      weight: remarkWords[kind].weight,
      steps: found,
      everywhere: all >= 4 && found.length === all,
    }
  })
}

/** Distance from sign to sign that keeps them apart. */
export const signPitch = 14

/** Where a sign's middle lies, in pixels. */
export interface Spot {
  readonly x: number
  readonly y: number
}

/** Triangle: stops; diamond: caution; disc: note. Without a letter for a remark that stands on no step. */
export function signMark(sign: Pick<Sign, 'letter' | 'weight'>, { x, y }: Spot, palette: Palette): Markup {
  const fill = { stops: palette.stops, caution: palette.caution, note: palette.note }[sign.weight]
  const ink = { stops: palette.onStops, caution: palette.onCaution, note: palette.onNote }[sign.weight]
  const outline = palette.note === palette.paper ? palette.ink : palette.paper
  const shape =
    sign.weight === 'note'
      ? element('circle', { cx: x, cy: y, r: 6.3, fill, stroke: outline })
      : element('path', { d: sign.weight === 'stops' ? triangle(x, y) : diamond(x, y), fill, stroke: outline })
  if (sign.letter === '') return shape
  const drop = sign.weight === 'stops' ? 4.4 : 3.1
  return shape + lettering(sign.letter, { x, y: y + drop, fill: ink, size: 9.5, anchor: 'middle', weight: 700 })
}

const triangle = (x: number, y: number): string => `M${rounded(x)} ${rounded(y - 8)}l8 14h-16z`
const diamond = (x: number, y: number): string => `M${rounded(x)} ${rounded(y - 7.5)}l7.5 7.5l-7.5 7.5l-7.5 -7.5z`
