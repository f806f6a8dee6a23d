import type { Curve, Feature } from '../core/terms/index.ts'
import { lettering, sizes } from './lettering.ts'
import { element, type Markup, rounded } from './markup.ts'
import type { RegimeNames } from './regimeNames.ts'
import type { Stage } from './stage.ts'
import { textWidth } from './textWidth.ts'

/** Height above the plot for the names of the regimes; next to nothing where none begins. */
export const regimeStripHeight = (curve: Curve | null): number =>
  curve?.features.some(({ name, value }) => (name === 'mixedBegins' || name === 'filmBegins') && value !== null) ===
  true
    ? 22
    : 6

interface Border {
  /** Pixels, held to the plot. */
  readonly at: number
  readonly inside: boolean
  readonly feature: Feature
}

/** Hairlines where the regimes begin, their intervals as short bars above the plot, and the regimes' names between them. */
export function regimes(curve: Curve | null, names: RegimeNames, stage: Stage): Markup {
  const mixed = border(curve, 'mixedBegins', stage)
  const film = border(curve, 'filmBegins', stage)
  const lines = [mixed, film].flatMap((one) => (one?.inside === true ? [borderLine(one, stage)] : []))
  const { plot } = stage
  const [slow, between, fast] = names
  const words = [
    regimeName(slow, [plot.left, mixed?.at], stage),
    regimeName(between, [mixed?.at, film?.at ?? plot.right], stage),
    regimeName(fast, [film?.at, plot.right], stage),
  ]
  return element('g', {}, ...lines, ...words)
}

function border(curve: Curve | null, name: Feature['name'], stage: Stage): Border | undefined {
  const feature = curve?.features.find((one) => one.name === name)
  if (feature === undefined || feature.value === null || !(feature.value > 0)) return undefined
  const [low, high] = stage.domain.speed
  return { at: stage.x(feature.value), inside: feature.value > low && feature.value < high, feature }
}

function borderLine({ at, feature }: Border, stage: Stage): Markup {
  const { plot, palette } = stage
  const hairline = element('path', {
    d: `M${rounded(at)} ${plot.top}V${plot.bottom}`,
    stroke: palette.quiet,
    'stroke-width': 0.8,
    'stroke-dasharray': '2 3',
    fill: 'none',
  })
  const from = feature.low === null ? plot.left : stage.x(feature.low)
  const to = feature.high === null ? plot.right : stage.x(feature.high)
  const interval = element('path', {
    d: `M${rounded(from)} ${plot.top - 4}H${rounded(to)}M${rounded(at)} ${plot.top - 7}v6`,
    stroke: palette.quiet,
    'stroke-width': 1.4,
    fill: 'none',
  })
  return element('g', {}, hairline, interval)
}

type Span = readonly [number | undefined, number | undefined]

/** A name that does not fit between its borders is left out; the description holds it. */
function regimeName(name: string, [from, to]: Span, stage: Stage): Markup {
  if (from === undefined || to === undefined || to - from < textWidth(name, sizes.small) + 6) return ''
  const { plot, palette } = stage
  return lettering(name, {
    x: (from + to) / 2,
    y: plot.top - 11,
    fill: palette.quiet,
    size: sizes.small,
    anchor: 'middle',
    italic: true,
  })
}
