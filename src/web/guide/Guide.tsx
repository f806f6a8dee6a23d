import type { ReactNode } from 'react'
import { go } from '../frame/address.ts'

/** The guided demo; filled in with the stations. */
export default function Guide({ page }: { readonly page: number }): ReactNode {
  return (
    <aside className="guide" aria-label="Guided demo">
      <p>Step {page}</p>
      <button type="button" onClick={() => go({ search: { tour: null } })}>
        Leave the guide
      </button>
    </aside>
  )
}
