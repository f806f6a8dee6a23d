import type { ReactNode } from 'react'

/** How far a station is: ring nothing yet, half disc something, disc done, triangle an open remark. */
export type StationSign = 'ring' | 'half' | 'disc' | 'triangle'

export const signWords: Readonly<Record<StationSign, string>> = {
  ring: 'nothing yet',
  half: 'begun',
  disc: 'done',
  triangle: 'an open remark',
}

/** The sign beside a station's word. Told apart by shape, not by colour. */
export const Sign = ({ sign }: { readonly sign: StationSign }): ReactNode => (
  <svg className="sign" viewBox="0 0 16 16" width="12" height="12" aria-hidden="true" focusable="false">
    {sign === 'triangle' ? (
      <path d="M8 2 15 14H1Z" className="sign-remark" />
    ) : (
      <>
        <circle cx="8" cy="8" r="6" className="sign-ring" />
        {sign === 'half' && <path d="M8 2a6 6 0 0 0 0 12Z" className="sign-fill" />}
        {sign === 'disc' && <circle cx="8" cy="8" r="6" className="sign-fill" />}
      </>
    )}
  </svg>
)
