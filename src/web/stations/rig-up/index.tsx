import type { ReactNode } from 'react'
import { Empty } from '../../frame/Empty.tsx'
import { Link } from '../../frame/Link.tsx'
import type { StationProps } from '../../frame/stationProps.ts'

/** See frame/stationProps.ts for what a station gets and how it keeps things. */
export default function RigUp(_: StationProps): ReactNode {
  return (
    <Empty
      shows="The run sheet of this study will stand here, one step at a time, to be ticked at the rig."
      todo={<Link to={{ station: 'plan' }}>Settle the plan</Link>}
    />
  )
}
