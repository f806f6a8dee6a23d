import '../acts.css'
import './lab.css'
import type { ReactNode } from 'react'
import { useKept } from '../../api/kept.ts'
import type { LabView } from '../../api/study.ts'
import { Dialog } from '../../frame/Dialog.tsx'
import { Link } from '../../frame/Link.tsx'
import { Refused } from '../../frame/Refused.tsx'
import type { DrawerProps } from '../../frame/stationProps.ts'
import { Waiting } from '../../frame/Waiting.tsx'
import { BodiesPart } from './BodiesPart.tsx'
import { FixturesPart } from './FixturesPart.tsx'
import { HistoryPart } from './HistoryPart.tsx'
import { LiquidsPart } from './LiquidsPart.tsx'
import { MaterialsPart } from './MaterialsPart.tsx'
import { PeoplePart } from './PeoplePart.tsx'
import { type DrawerPart, drawerParts, isPart, partWords } from './parts.ts'
import { RigsPart } from './RigsPart.tsx'
import { StandardsPart } from './StandardsPart.tsx'

/** The Lab drawer: what the lab owns, how often it was used, who works there, and all that ever changed. */
export default function LabDrawer({ study, part, close }: DrawerProps): ReactNode {
  const { value: lab, refusal } = useKept<LabView>('/api/lab')
  const open = isPart(part) ? part : 'rigs'
  return (
    <Dialog title={lab?.name === undefined || lab.name === '' ? 'Lab' : lab.name} close={close} aside>
      <nav className="drawer-parts" aria-label="Parts of the lab">
        {drawerParts.map((name) => (
          <Link key={name} to={{ search: { lab: name } }} aria-current={name === open ? 'page' : undefined}>
            {partWords[name]}
          </Link>
        ))}
      </nav>
      {refusal !== undefined && <Refused refusal={refusal} />}
      {lab === undefined ? (
        refusal === undefined && <Waiting what="Reading the lab" />
      ) : (
        <section className="drawer-part" aria-labelledby="drawer-part">
          <h3 id="drawer-part">{partWords[open]}</h3>
          <Part part={open} lab={lab} study={study} />
        </section>
      )}
    </Dialog>
  )
}

function Part({
  part,
  lab,
  study,
}: {
  readonly part: DrawerPart
  readonly lab: LabView
  readonly study: DrawerProps['study']
}): ReactNode {
  switch (part) {
    case 'rigs':
      return <RigsPart lab={lab} />
    case 'fixtures':
      return <FixturesPart />
    case 'bodies':
      return <BodiesPart study={study} />
    case 'liquids':
      return <LiquidsPart />
    case 'materials':
      return <MaterialsPart />
    case 'standards':
      return <StandardsPart study={study} />
    case 'people':
      return <PeoplePart lab={lab} />
    case 'history':
      return <HistoryPart />
  }
}
