import { type ReactNode, useLayoutEffect, useRef } from 'react'

/** A small picture of src/figure as an element of the page; its text is escaped where it is drawn. */
export function Svg({ markup }: { readonly markup: string }): ReactNode {
  const place = useRef<HTMLSpanElement>(null)
  useLayoutEffect(() => {
    // The page says the same in its own style; its security policy allows none inline.
    const bare = markup.replaceAll(/ style="[^"]*"/g, '')
    const parsed = new DOMParser().parseFromString(bare, 'image/svg+xml').documentElement
    place.current?.replaceChildren(document.adoptNode(parsed))
  }, [markup])
  return <span ref={place} className="svg" />
}
