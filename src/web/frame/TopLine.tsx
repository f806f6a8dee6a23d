import type { ReactNode } from 'react'
import { Link } from './Link.tsx'
import { toggleLook, useLook } from './look.ts'
import { WriterField } from './WriterField.tsx'

interface TopLineProps {
  readonly title: string
  readonly find: () => void
  readonly keys: () => void
}

/** The question as title; at its right the drawer, find, who writes, and light or dark. */
export function TopLine({ title, find, keys }: TopLineProps): ReactNode {
  return (
    <div className="top-line">
      <a className="skip" href="#work">
        To the work
      </a>
      <Link to={{ study: null }} className="home" title="All studies of the lab">
        Kufe
      </Link>
      <h1>{title}</h1>
      <div className="tools">
        <Link to={{ search: { lab: 'rigs' } }}>Lab</Link>
        <Tools find={find} keys={keys} />
      </div>
    </div>
  )
}

/** What every page has at its right. */
export function Tools({ find, keys }: Omit<TopLineProps, 'title'>): ReactNode {
  const look = useLook()
  return (
    <>
      <button type="button" onClick={find} title="Find anything (/)">
        Find
      </button>
      <Link to={{ search: { word: 'list' } }} title="What the words mean (g)">
        Glossary
      </Link>
      <button type="button" onClick={keys} title="Keys (?)">
        Keys
      </button>
      <WriterField />
      <button type="button" onClick={toggleLook} title="Light or dark (l)">
        {look === 'light' ? 'Dark' : 'Light'}
      </button>
    </>
  )
}
