import type { ReactNode } from 'react'
import { Empty } from '../../frame/Empty.tsx'
import { Link } from '../../frame/Link.tsx'
import type { StationProps } from '../../frame/stationProps.ts'

/** What is to be known, in a sentence or two; beside it what the answer will be and what it costs. */
export default function Ask(_: StationProps): ReactNode {
  return (
    <Empty
      shows="What is to be known, in a sentence or two; beside it what the answer will be and what it costs."
      todo={<Link to={{ station: 'read' }}>Go on to the records</Link>}
    />
  )
}
