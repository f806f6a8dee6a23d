import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

/** Width of a place on the page in whole pixels, held between two bounds, and again when it changes. */
export function useWidth(least: number, most: number): readonly [RefObject<HTMLDivElement | null>, number] {
  const place = useRef<HTMLDivElement>(null)
  const [width, setWidth] = useState(least)
  useLayoutEffect(() => {
    const box = place.current
    if (box === null) return
    const measure = (): void => setWidth(Math.round(Math.min(most, Math.max(least, box.clientWidth))))
    measure()
    const watch = new ResizeObserver(measure)
    watch.observe(box)
    return () => watch.disconnect()
  }, [least, most])
  return [place, width]
}
