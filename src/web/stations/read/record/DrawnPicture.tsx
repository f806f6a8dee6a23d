import { type ReactNode, useCallback } from 'react'
import type { Look } from '../../../frame/look.ts'
import { Picture } from '../../../pictures/Picture.tsx'

interface DrawnPictureProps {
  readonly picture: { readonly caption: string; readonly light: string; readonly dark: string }
}

/** Width for which the server draws. */
const drawnFor = 720

/** A picture that came drawn, for a light and a dark page. */
export function DrawnPicture({ picture }: DrawnPictureProps): ReactNode {
  // The page says the same in its own style; its security policy allows none inline.
  const draw = useCallback(
    (_width: number, look: Look) => picture[look].replace(' style="image-rendering:pixelated"', ''),
    [picture],
  )
  return (
    <figure>
      <Picture draw={draw} least={drawnFor} most={drawnFor} />
      <figcaption className="quiet">{picture.caption}</figcaption>
    </figure>
  )
}
