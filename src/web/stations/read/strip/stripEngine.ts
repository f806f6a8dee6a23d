import type { RecordStretch } from '../../../../core/terms/index.ts'
import type { PaletteName } from '../../../../figure/index.ts'
import type { Envelopes, Piece } from './envelopes.ts'
import { type StripLayout, stripLayout } from './layout.ts'
import { paintStrip } from './paintStrip.ts'
import { PixelColumns } from './paintTrace.ts'
import { readingAt } from './reading.ts'
import { type StripScene, stripScene } from './stripScene.ts'
import type { TimePlace } from './timePlace.ts'
import { type Limits, panned, span, type View, zoomed } from './view.ts'

/** What of a strip comes from outside. */
export interface StripGiven {
  readonly names: Parameters<typeof stripLayout>[0]
  readonly stretches: readonly RecordStretch[]
  readonly palette: PaletteName
  readonly lit: number | null
}

/** A strip on its canvas: paints at most once a frame, and only when something changed. */
export class StripEngine {
  readonly limits: Limits
  readonly #canvas: HTMLCanvasElement
  readonly #envelopes: Envelopes
  readonly #columns = new PixelColumns()
  readonly #moved: (view: View) => void
  #given: StripGiven
  #view: View
  #layout: StripLayout
  #scene: StripScene | undefined
  #frame = 0
  /** A tile has come since the last picture. */
  #fresh = false
  #pieces: readonly Piece[] = []

  constructor(
    canvas: HTMLCanvasElement,
    from: { envelopes: Envelopes; limits: Limits; view: View; given: StripGiven; moved: (view: View) => void },
  ) {
    this.#canvas = canvas
    this.#envelopes = from.envelopes
    this.limits = from.limits
    this.#view = from.view
    this.#given = from.given
    this.#moved = from.moved
    this.#layout = stripLayout(from.given.names, canvas.clientWidth)
    from.envelopes.tell(() => {
      // The first tile brings the scales.
      if (this.#scene?.panels.some(({ scale }) => scale !== undefined) !== true) this.#scene = undefined
      this.#fresh = true
      this.paint()
    })
    this.resize()
  }

  get view(): View {
    return this.#view
  }

  get layout(): StripLayout {
    return this.#layout
  }

  /** For what lies above the canvas. */
  get timePlace(): TimePlace {
    const { left, right, bottom, lane } = this.#layout
    const placeOf = (time: number): number => this.placeOf(time)
    return { left, right, bottom, top: lane.top, placeOf, timeAt: (x) => this.timeAt(x) }
  }

  /** Time under a place of the page, counted from the strip's left edge. */
  timeAt(x: number): number {
    const { left, right } = this.#layout
    return this.#view.from + ((x - left) / (right - left)) * span(this.#view)
  }

  /** What is there at a time, in words. */
  readingAt(time: number): string {
    const { stretches } = this.#given
    const names = this.#layout.panels.map(({ name }) => name)
    return readingAt(time, { pieces: this.#pieces, names, stretches })
  }

  /** Place of a time, in pixels from the strip's left edge. */
  placeOf(time: number): number {
    const { left, right } = this.#layout
    return left + ((time - this.#view.from) / span(this.#view)) * (right - left)
  }

  look(view: View): void {
    if (view.from === this.#view.from && view.to === this.#view.to) return
    this.#view = view
    this.#moved(view)
    this.paint()
  }

  zoom(factor: number, at: number = (this.#view.from + this.#view.to) / 2): void {
    this.look(zoomed(this.#view, { factor, at }, this.limits))
  }

  /** Moves by a share of what is in sight. */
  pan(share: number): void {
    this.look(panned(this.#view, share * span(this.#view), this.limits))
  }

  give(given: StripGiven): void {
    this.#given = given
    this.#scene = undefined
    this.paint()
  }

  resize(): void {
    const density = globalThis.devicePixelRatio
    const { clientWidth } = this.#canvas
    this.#layout = stripLayout(this.#given.names, clientWidth)
    this.#canvas.width = Math.round(clientWidth * density)
    this.#canvas.height = Math.round(this.#layout.height * density)
    this.#canvas.style.height = `${this.#layout.height}px`
    this.#scene = undefined
    this.#moved(this.#view)
    this.paint()
  }

  paint(): void {
    if (this.#frame !== 0) return
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0
      this.paintNow()
    })
  }

  paintNow(): void {
    const context = this.#canvas.getContext('2d', { alpha: false })
    if (context === null || this.#layout.width === 0) return
    const { stretches, palette, lit } = this.#given
    this.#scene ??= stripScene(this.#layout, stretches, this.#envelopes.overview())
    const density = globalThis.devicePixelRatio
    const pixels = (this.#layout.right - this.#layout.left) * density
    const pieces = this.#envelopes.pieces(this.#view, pixels)
    this.#pieces = pieces
    paintStrip(context, { scene: this.#scene, view: this.#view, pieces, palette, density, lit, columns: this.#columns })
    // What lies above the canvas tells values too.
    if (this.#fresh) this.#moved(this.#view)
    this.#fresh = false
  }

  close(): void {
    cancelAnimationFrame(this.#frame)
    this.#envelopes.close()
  }
}
