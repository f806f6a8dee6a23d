import { above, deepestLevel, levelFor, placesIn, type Tile, type TilePlace, tileSpan } from './tile.ts'
import type { View } from './view.ts'

/** A tile and the part of it that is to be drawn. */
export interface Piece {
  readonly tile: Tile
  readonly part: View
}

/** Tiles that are held at the most; the longest unused go first. */
const most = 240

/** Fetches one tile; an abort or a lost server may reject. */
export type FetchTile = (part: View, signal: AbortSignal) => Promise<Tile>

/**
 * Min/max envelopes of one record at many zoom levels, held in the browser. Whoever draws gets at once the best that is here, coarser where
 * the right tile is still under way, and is told when there is more.
 */
export class Envelopes {
  readonly whole: View
  readonly #deepest: number
  readonly #fetch: FetchTile
  readonly #tiles = new Map<string, Tile>()
  readonly #asked = new Set<string>()
  readonly #stop = new AbortController()
  #told: () => void = () => {}

  constructor({ whole, rows, fetchTile }: { whole: View; rows: number; fetchTile: FetchTile }) {
    this.whole = whole
    this.#deepest = deepestLevel(rows)
    this.#fetch = fetchTile
  }

  /** Who is to hear when a tile has come. */
  tell(listener: () => void): void {
    this.#told = listener
  }

  /** No more tiles are wanted. */
  close(): void {
    this.#told = () => {}
    this.#stop.abort()
  }

  /** What there is of the view now, from left to right; asks for what is missing. */
  pieces(view: View, pixels: number): readonly Piece[] {
    const level = levelFor(view, pixels, { whole: this.whole, deepest: this.#deepest })
    this.#want({ level: 0, index: 0 })
    const pieces: Piece[] = []
    for (const place of placesIn(view, level, this.whole)) {
      const tile = this.#best(place)
      if (tile?.exact !== true) this.#want(place)
      const part = tileSpan(place, this.whole)
      const last = pieces.at(-1)
      if (tile === undefined) continue
      if (last?.tile === tile) pieces[pieces.length - 1] = { tile, part: { from: last.part.from, to: part.to } }
      else pieces.push({ tile, part })
    }
    return pieces
  }

  /** The coarsest picture of the whole record, once it is here. */
  overview(): Tile | undefined {
    this.#want({ level: 0, index: 0 })
    return this.#tiles.get('0/0')
  }

  #best(place: TilePlace): Tile | undefined {
    for (let at = place; at.level >= 0; at = above(at)) {
      const key = `${at.level}/${at.index}`
      const tile = this.#tiles.get(key)
      if (tile === undefined) continue
      this.#tiles.delete(key)
      this.#tiles.set(key, tile)
      return tile
    }
    return undefined
  }

  #want(place: TilePlace): void {
    const key = `${place.level}/${place.index}`
    if (this.#tiles.has(key) || this.#asked.has(key) || this.#stop.signal.aborted) return
    this.#asked.add(key)
    const part = tileSpan(place, this.whole)
    this.#fetch(part, this.#stop.signal)
      .then((tile) => {
        this.#tiles.set(key, tile)
        for (const old of this.#tiles.keys()) {
          if (this.#tiles.size <= most) break
          if (old !== '0/0') this.#tiles.delete(old)
        }
        this.#told()
      })
      // Asked again at the next picture; the page says by itself when the server is away.
      .catch(() => undefined)
      .finally(() => this.#asked.delete(key))
  }
}
