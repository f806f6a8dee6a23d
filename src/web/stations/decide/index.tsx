import type { ReactNode } from 'react'
import { Empty } from '../../frame/Empty.tsx'
import { Link } from '../../frame/Link.tsx'
import type { StationProps } from '../../frame/stationProps.ts'

/** See frame/stationProps.ts for what a station gets and how it keeps things. */
export default function Decide(_: StationProps): ReactNode {
  return (
    <Empty
      shows="The verdict will stand here as a sentence, with the difference of the samples, its band and its margin."
      todo={<Link to={{ station: 'ask' }}>Say what is to be decided</Link>}
    />
  )
}
