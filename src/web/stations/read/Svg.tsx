import { type ReactNode, useLayoutEffect, useRef } from 'react'

/** A small picture of src/figure as an element of the page; its text is escaped where it is drawn. */
export function Svg({ markup }: { readonly markup: string }): ReactNode {
  const place = useRef<HTMLSpanElement>(null)
  useLayoutEffect(() => {
    const parsed = new DOMParser().parseFromString(markup, 'image/svg+xml').documentElement
    place.current?.replaceChildren(document.adoptNode(parsed))
  }, [markup])
  return <span ref={place} className="svg" />
}
