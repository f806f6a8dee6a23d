import type { RecordStretch, StretchKind } from '../../../../core/terms/index.ts'
import { type PaletteName, palettes } from '../../../../figure/index.ts'
import type { StripPicture } from './stripPicture.ts'

type Toned = Exclude<StretchKind, 'accepted'>

/** Tones and patterns over the panels, signs in the lane, step numbers above, the lit step in the accent. */
export function paintStretches(
  context: CanvasRenderingContext2D,
  picture: StripPicture,
  x: (time: number) => number,
): void {
  const { scene, view, palette: look, lit } = picture
  const { layout, stretches } = scene
  const palette = palettes[look]
  const seen = stretches.filter(({ from, to }) => to > view.from && from < view.to)
  const held = (time: number): number => Math.min(layout.right, Math.max(layout.left, x(time)))
  context.save()
  for (const { kind, step, from, to } of seen) {
    const area = { left: held(from), right: held(to), top: layout.lane.bottom + 6, bottom: layout.bottom }
    if (step === lit) {
      context.globalAlpha = 0.1
      context.fillStyle = palette.accent
      fill(context, area)
      context.globalAlpha = 1
    }
    if (kind !== 'accepted') tone(context, { kind, look, area })
    mark(context, kind, { look, area: { ...area, ...layout.lane } })
  }
  context.restore()
  paintNumbers(context, seen, { picture, x })
}

interface Area {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const fill = (context: CanvasRenderingContext2D, { left, right, top, bottom }: Area): void =>
  context.fillRect(left, top, Math.max(0.8, right - left), bottom - top)

function tone(
  context: CanvasRenderingContext2D,
  { kind, look, area }: { kind: Toned; look: PaletteName; area: Area },
): void {
  const palette = palettes[look]
  context.globalAlpha = kind === 'blank' ? 0.05 : 0.12
  context.fillStyle = kind === 'outOfContact' ? palette.stops : palette.shade
  fill(context, area)
  context.globalAlpha = 1
  const pattern = patternOf(context, kind, look)
  if (pattern === null) return
  context.fillStyle = pattern
  fill(context, area)
}

function mark(
  context: CanvasRenderingContext2D,
  kind: StretchKind,
  { look, area }: { look: PaletteName; area: Area },
): void {
  const palette = palettes[look]
  const bar = { ...area, top: area.top + 3, bottom: area.bottom - 3 }
  if (kind !== 'accepted' && kind !== 'notFitted') {
    tone(context, { kind, look, area })
    return
  }
  context.fillStyle = palette.accent
  fill(context, bar)
  if (kind === 'accepted' || bar.right - bar.left < 3) return
  context.fillStyle = palette.paper
  fill(context, { left: bar.left + 1.2, right: bar.right - 1.2, top: bar.top + 1.2, bottom: bar.bottom - 1.2 })
}

const patterns = new Map<string, CanvasPattern | null>()

/** Strokes, crosses, dots and bars, so that no meaning hangs on grey alone; drawn once and kept. */
function patternOf(context: CanvasRenderingContext2D, kind: Toned, look: PaletteName): CanvasPattern | null {
  const key = `${kind} ${look}`
  const kept = patterns.get(key)
  if (kept !== undefined) return kept
  const palette = palettes[look]
  const size = 8
  const tile = new OffscreenCanvas(size, size)
  const pen = tile.getContext('2d')
  if (pen === null) return null
  pen.strokeStyle = kind === 'outOfContact' ? palette.stops : palette.shade
  pen.fillStyle = palette.shade
  pen.globalAlpha = 0.55
  const strokes: Readonly<Record<Toned, readonly (readonly [number, number, number, number])[]>> = {
    warmUp: [
      [-1, 9, 9, -1],
      [-1, 1, 1, -1],
      [7, 9, 9, 7],
    ],
    outOfContact: [
      [0, 0, 8, 8],
      [8, 0, 0, 8],
    ],
    notFitted: [[0, 0.5, 8, 0.5]],
    blank: [],
  }
  for (const [x1, y1, x2, y2] of strokes[kind]) {
    pen.beginPath()
    pen.moveTo(x1, y1)
    pen.lineTo(x2, y2)
    pen.stroke()
  }
  if (kind === 'blank') pen.fillRect(3, 3, 1.6, 1.6)
  const pattern = context.createPattern(tile, 'repeat')
  patterns.set(key, pattern)
  return pattern
}

/** A hairline where a step begins, its number above where there is room. */
function paintNumbers(
  context: CanvasRenderingContext2D,
  seen: readonly RecordStretch[],
  { picture, x }: { picture: StripPicture; x: (time: number) => number },
): void {
  const { scene, palette: look, lit } = picture
  const { layout } = scene
  const palette = palettes[look]
  context.textAlign = 'center'
  context.textBaseline = 'alphabetic'
  let right = Number.NEGATIVE_INFINITY
  const steps = Map.groupBy(seen, ({ step }) => step)
  for (const [step, parts] of steps) {
    const begin = x(parts[0].from)
    const end = x(parts[parts.length - 1].to)
    if (begin >= layout.left) {
      context.fillStyle = palette.hairline
      context.fillRect(begin, layout.lane.top, 0.8, layout.bottom - layout.lane.top)
    }
    const middle = (Math.max(layout.left, begin) + Math.min(layout.right, end)) / 2
    context.font = `${step === lit ? 700 : 400} 11.5px 'Source Sans 3', 'Noto Sans', 'DejaVu Sans', system-ui, sans-serif`
    const half = context.measureText(String(step)).width / 2 + 2
    if (middle - half < right && step !== lit) continue
    right = middle + half
    context.fillStyle = step === lit ? palette.accent : palette.quiet
    context.fillText(String(step), middle, layout.lane.top - 4)
  }
}
