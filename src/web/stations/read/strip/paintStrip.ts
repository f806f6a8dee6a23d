import { channelWords, linearTicks, palettes, tickLabel, timeUnit } from '../../../../figure/index.ts'
import { paintStretches } from './paintStretches.ts'
import { paintTrace } from './paintTrace.ts'
import type { StripPicture } from './stripPicture.ts'
import type { ScenePanel } from './stripScene.ts'
import { span } from './view.ts'

const font = (size: number, weight = 400): string =>
  `${weight} ${size}px 'Source Sans 3', 'Noto Sans', 'DejaVu Sans', system-ui, sans-serif`

/** Paints all of a strip but cursor and handles, which lie above it as elements of their own. */
export function paintStrip(context: CanvasRenderingContext2D, picture: StripPicture): void {
  const { scene, view, density } = picture
  const { layout } = scene
  const palette = palettes[picture.palette]
  context.setTransform(density, 0, 0, density, 0, 0)
  context.fillStyle = palette.paper
  context.fillRect(0, 0, layout.width, layout.height)
  const x = (time: number): number => layout.left + ((time - view.from) / span(view)) * (layout.right - layout.left)
  paintStretches(context, picture, x)
  for (const panel of scene.panels) paintRules(context, panel, picture)
  paintAxis(context, picture, x)
  context.setTransform(1, 0, 0, 1, 0, 0)
  context.fillStyle = palette.ink
  for (const { name, scale } of scene.panels) {
    if (scale === undefined) continue
    const place = {
      view,
      left: Math.round(layout.left * density),
      right: Math.round(layout.right * density),
      y: (value: number): number => scale.y(value) * density,
      thick: Math.max(1, density),
    }
    paintTrace(context, { pieces: picture.pieces, name }, { place, columns: picture.columns })
  }
}

function paintRules(
  context: CanvasRenderingContext2D,
  { name, top, bottom, scale }: ScenePanel,
  picture: StripPicture,
): void {
  const palette = palettes[picture.palette]
  const { left, right } = picture.scene.layout
  context.font = font(11.5)
  context.textAlign = 'right'
  context.textBaseline = 'middle'
  for (const { value, y } of scale?.ticks ?? []) {
    context.fillStyle = palette.hairline
    context.fillRect(left, Math.round(y), right - left, 0.8)
    context.fillStyle = palette.quiet
    context.fillText(tickLabel(value), left - 7, y + 0.5)
  }
  context.fillStyle = palette.ink
  context.fillRect(left - 1, top, 1, bottom - top)
  context.textAlign = 'left'
  const middle = (top + bottom) / 2
  context.fillText(channelWords[name].words, right + 10, middle - 7)
  context.fillStyle = palette.quiet
  if (scale === undefined) context.fillText('no number', right + 10, middle + 8)
  else if (scale.unit.text !== '1') context.fillText(`(${scale.unit.text})`, right + 10, middle + 8)
}

function paintAxis(
  context: CanvasRenderingContext2D,
  { scene, view, palette: look }: StripPicture,
  x: (time: number) => number,
): void {
  const palette = palettes[look]
  const { left, right, bottom } = scene.layout
  const unit = timeUnit([view.from, view.to])
  const ticks = linearTicks(view.from / unit.seconds, view.to / unit.seconds, 74 / (right - left))
  context.fillStyle = palette.ink
  context.fillRect(left - 1, bottom, right - left + 1, 1)
  context.font = font(11.5)
  context.textAlign = 'center'
  context.textBaseline = 'alphabetic'
  for (const tick of ticks) {
    const at = x(tick * unit.seconds)
    if (at < left - 0.5 || at > right + 0.5) continue
    context.fillStyle = palette.ink
    context.fillRect(at, bottom, 1, 6)
    context.fillStyle = palette.quiet
    context.fillText(fineLabel(tick, ticks), at, bottom + 19)
  }
  context.fillStyle = palette.ink
  context.font = font(12.5)
  context.fillText(`time (${unit.text})`, (left + right) / 2, bottom + 35)
}

/** Far into a long record neighbouring ticks differ in a late digit only. */
function fineLabel(tick: number, ticks: readonly number[]): string {
  const apart = ticks.length > 1 ? ticks[1] - ticks[0] : 1
  const places = Math.max(0, Math.min(9, -Math.floor(Math.log10(apart) + 1e-9)))
  const text = tick.toFixed(places)
  return text.startsWith('-') ? `−${text.slice(1)}` : text
}
