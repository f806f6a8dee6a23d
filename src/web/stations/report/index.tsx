import type { ReactNode } from 'react'
import { Empty } from '../../frame/Empty.tsx'
import { Link } from '../../frame/Link.tsx'
import type { StationProps } from '../../frame/stationProps.ts'

/** See frame/stationProps.ts for what a station gets and how it keeps things. */
export default function Report(_: StationProps): ReactNode {
  return (
    <Empty
      shows="The paper will stand here page by page, with what it still lacks at its side."
      todo={<Link to={{ station: 'ask' }}>Begin with the question</Link>}
    />
  )
}
