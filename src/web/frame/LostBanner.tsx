import type { ReactNode } from 'react'
import { useLost } from '../api/connection.ts'

/** Says that the server is away; goes by itself when it is back. */
export function LostBanner(): ReactNode {
  const lost = useLost()
  return (
    <div role="alert" className={lost ? 'lost' : 'unseen'}>
      {lost &&
        'The server does not answer. What you type is kept in this browser and sent when it is back; pictures go on by themselves.'}
    </div>
  )
}
