import type { ReactNode } from 'react'
import { Link } from '../frame/Link.tsx'

interface TermProps {
  /** Key of the glossary's entry; of a remark its kind. */
  readonly word: string
  readonly children: ReactNode
}

/** A word that can be asked what it means. */
export const Term = ({ word, children }: TermProps): ReactNode => (
  <Link to={{ search: { word } }} className="term" title="What this word means">
    {children}
  </Link>
)
