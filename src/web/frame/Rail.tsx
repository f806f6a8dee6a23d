import type { ReactNode } from 'react'
import type { StudyView } from '../api/study.ts'
import { Link } from './Link.tsx'
import { Sign, signWords } from './Sign.tsx'
import { stationSigns } from './stationSigns.ts'
import { type StationName, stationNames, stationWords } from './stations.ts'

interface RailProps {
  readonly study: StudyView | undefined
  readonly station: StationName
}

/** The six stations in the order of the job, each with the sign of how far it is. */
export function Rail({ study, station }: RailProps): ReactNode {
  const signs = study === undefined ? undefined : stationSigns(study)
  return (
    <nav className="rail" aria-label="Stations">
      <ol>
        {stationNames.map((name, index) => {
          const sign = signs?.[name] ?? 'ring'
          return (
            <li key={name}>
              <Link
                to={{ station: name }}
                aria-current={name === station ? 'page' : undefined}
                title={`${stationWords[name].about} (key ${index + 1})`}
              >
                <Sign sign={sign} /> {stationWords[name].name}
                <span className="unseen">, {signWords[sign]}</span>
              </Link>
            </li>
          )
        })}
      </ol>
    </nav>
  )
}
