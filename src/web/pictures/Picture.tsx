import { type ReactNode, type RefObject, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react'
import { type Look, useLook } from '../frame/look.ts'

interface PictureProps {
  /** Draws at a width in pixels, for a light or a dark page; gives SVG text of src/figure. Keep it stable with useCallback. */
  readonly draw: (width: number, look: Look) => string
  /** Narrowest and widest that the figure is made for; between, it is drawn at the width of its place. */
  readonly least?: number
  readonly most?: number
  readonly className?: string
  /** Handles laid over the picture, in pixels of the figure; `scale` is how much it is shrunk on a narrow page. */
  readonly over?: (width: number, scale: number) => ReactNode
}

/** The one style attribute of figures; the page's own style says the same, and its security policy allows none inline. */
const inlineStyle = ' style="font-variant-numeric: tabular-nums"'

/** Whether a place is on the screen or about to be; true until the browser has looked, and on paper. */
function useSeen(place: RefObject<HTMLElement | null>): boolean {
  const [seen, setSeen] = useState(true)
  useEffect(() => {
    const box = place.current
    if (box === null) return
    const watch = new IntersectionObserver((entries) => setSeen(entries.some(({ isIntersecting }) => isIntersecting)), {
      rootMargin: '200px',
    })
    const print = (): void => setSeen(true)
    watch.observe(box)
    addEventListener('beforeprint', print)
    return () => {
      watch.disconnect()
      removeEventListener('beforeprint', print)
    }
  }, [place])
  return seen
}

/** A figure at the width of its place, drawn again when that, the data or the look changes; the last frame stays till then. */
export function Picture({ draw, least = 480, most = 1400, className = '', over }: PictureProps): ReactNode {
  const place = useRef<HTMLDivElement>(null)
  const [room, setRoom] = useState(0)
  const look = useLook()
  useLayoutEffect(() => {
    const box = place.current
    if (box === null) return
    const measure = (): void => setRoom(box.clientWidth)
    measure()
    const watch = new ResizeObserver(measure)
    watch.observe(box)
    return () => watch.disconnect()
  }, [])
  const seen = useSeen(place)
  const last = useRef({ svg: '', look })
  const width = Math.round(Math.min(most, Math.max(least, room)))
  // Out of sight it keeps its last frame, so that what is in sight follows the hand; the first is always drawn: it has its height.
  const svg = useMemo(() => {
    const { svg: before, look: drawnFor } = last.current
    const rests = !seen && before !== '' && drawnFor === look
    return room === 0 || rests ? before : draw(width, look).replace(inlineStyle, '')
  }, [draw, room, seen, width, look])
  last.current = { svg, look }
  useLayoutEffect(() => {
    const box = place.current
    if (box === null || svg === '') return
    const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement
    box.replaceChildren(document.adoptNode(parsed))
  }, [svg])
  return (
    <div className={`picture ${className}`}>
      <div ref={place} className="drawn" />
      {room > 0 && over?.(width, Math.min(1, room / width))}
    </div>
  )
}
