import type { ReactNode } from 'react'
import { useKept } from '../../api/kept.ts'
import type { LabView } from '../../api/study.ts'
import { Dialog } from '../../frame/Dialog.tsx'
import type { DrawerProps } from '../../frame/stationProps.ts'
import { Waiting } from '../../frame/Waiting.tsx'

/** The Lab drawer: what the lab owns and who works there. */
export default function LabDrawer({ close }: DrawerProps): ReactNode {
  const { value: lab } = useKept<LabView>('/api/lab')
  return (
    <Dialog title="Lab" close={close} aside>
      {lab === undefined ? <Waiting what="Reading the lab" /> : <p>{lab.name}</p>}
    </Dialog>
  )
}
