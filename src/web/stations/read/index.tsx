import type { ReactNode } from 'react'
import { Empty } from '../../frame/Empty.tsx'
import { Link } from '../../frame/Link.tsx'
import type { StationProps } from '../../frame/stationProps.ts'

/** See frame/stationProps.ts for what a station gets and how it keeps things. */
export default function Read(_: StationProps): ReactNode {
  return (
    <Empty
      shows="Records dropped here will lie on a shelf, each with its curve and its remarks."
      todo={<Link to={{ station: 'plan' }}>See what the plan expects</Link>}
    />
  )
}
