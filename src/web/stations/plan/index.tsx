import type { ReactNode } from 'react'
import { Empty } from '../../frame/Empty.tsx'
import { Link } from '../../frame/Link.tsx'
import type { StationProps } from '../../frame/stationProps.ts'

/** What is mounted, pressed and slid, as a paragraph; beside it pictures that follow. */
export default function Plan(_: StationProps): ReactNode {
  return (
    <Empty
      shows="What is mounted, pressed and slid, as a paragraph; beside it pictures that follow."
      todo={<Link to={{ station: 'read' }}>Go on to the records</Link>}
    />
  )
}
