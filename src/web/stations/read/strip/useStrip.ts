import { type RefObject, useEffect, useRef, useState } from 'react'
import { Envelopes, type FetchTile } from './envelopes.ts'
import { type HandTells, handOn } from './hand.ts'
import { StripEngine, type StripGiven } from './stripEngine.ts'
import type { View } from './view.ts'

/** A record as the strip needs it. */
export interface StripSource {
  readonly whole: View
  readonly rows: number
  readonly fetchTile: FetchTile
}

/** Where a strip begins, and who is told of where it went. */
interface StripBegin {
  readonly begin: View | undefined
  readonly seen: (view: View) => void
}

interface Strip {
  readonly canvas: RefObject<HTMLCanvasElement | null>
  readonly surface: RefObject<HTMLDivElement | null>
  readonly engine: StripEngine | undefined
  /** Counts the pictures that moved, so that what lies above the canvas follows. */
  readonly moves: number
}

/** Rest of the hand after which the address follows, ms. */
const rest = 500

/** The engine of a strip in the life of a component. `source` must stay the same object for the same record. */
export function useStrip(source: StripSource, given: StripGiven, tells: HandTells & StripBegin): Strip {
  const canvas = useRef<HTMLCanvasElement>(null)
  const surface = useRef<HTMLDivElement>(null)
  const [engine, setEngine] = useState<StripEngine>()
  const [moves, setMoves] = useState(0)
  const latest = useRef({ given, tells })
  latest.current = { given, tells }
  useEffect(() => {
    const [place, above] = [canvas.current, surface.current]
    if (place === null || above === null) return
    const { whole, rows, fetchTile } = source
    let timer: ReturnType<typeof setTimeout> | undefined
    const made = new StripEngine(place, {
      envelopes: new Envelopes({ whole, rows, fetchTile }),
      limits: { whole, shortest: Math.min(whole.to - whole.from, (30 * (whole.to - whole.from)) / Math.max(1, rows)) },
      view: latest.current.tells.begin ?? whole,
      given: latest.current.given,
      moved: (view) => {
        setMoves((count) => count + 1)
        clearTimeout(timer)
        timer = setTimeout(() => latest.current.tells.seen(view), rest)
      },
    })
    setEngine(made)
    const watch = new ResizeObserver(() => made.resize())
    watch.observe(place)
    const letGo = handOn(above, made, {
      over: (time) => latest.current.tells.over(time),
      left: () => latest.current.tells.left(),
      pressed: (time) => latest.current.tells.pressed(time),
    })
    return () => {
      letGo()
      clearTimeout(timer)
      watch.disconnect()
      made.close()
      setEngine(undefined)
    }
  }, [source])
  const { names, stretches, palette, lit } = given
  useEffect(() => engine?.give({ names, stretches, palette, lit }), [engine, names, stretches, palette, lit])
  return { canvas, surface, engine, moves }
}
