import type { ReactNode } from 'react'

interface EmptyProps {
  /** What will be seen here, one sentence. */
  readonly shows: string
  /** The one thing to do: a button or a link. */
  readonly todo: ReactNode
  /** Drawn from the demo. */
  readonly children?: ReactNode
}

/** A station that holds nothing yet: what it will show, drawn from the demo and marked so, and one thing to do. */
export const Empty = ({ shows, todo, children }: EmptyProps): ReactNode => (
  <div className="empty">
    <p className="say">{shows}</p>
    <p>{todo}</p>
    {children !== undefined && (
      <figure className="example">
        <figcaption>An example: invented data of the lacquer workshop, not yours.</figcaption>
        {children}
      </figure>
    )}
  </div>
)
