import { type ComponentType, lazy, type ReactNode, Suspense, useEffect } from 'react'
import { useKept } from '../api/kept.ts'
import { patiently } from '../api/patiently.ts'
import type { StudyView } from '../api/study.ts'
import { studyPaper, usePaper } from '../api/usePaper.ts'
import { type QuestionPaper, titleOf } from '../question/questionPaper.ts'
import { useKeys } from '../work/keys.ts'
import { forgetChanges } from '../work/undo.ts'
import { go, useAddress } from './address.ts'
import { Boundary } from './Boundary.tsx'
import { Rail } from './Rail.tsx'
import { Refused } from './Refused.tsx'
import type { StationProps } from './stationProps.ts'
import { type StationName, stationNames, stationWords } from './stations.ts'
import { TopLine } from './TopLine.tsx'
import { Waiting } from './Waiting.tsx'

type StationModule = { readonly default: ComponentType<StationProps> }

/** Each station is one folder, loaded when somebody goes there. */
const loaders: Readonly<Record<StationName, () => Promise<StationModule>>> = {
  ask: patiently(() => import('../stations/ask/index.tsx')),
  plan: patiently(() => import('../stations/plan/index.tsx')),
  'rig-up': patiently(() => import('../stations/rig-up/index.tsx')),
  read: patiently(() => import('../stations/read/index.tsx')),
  decide: patiently(() => import('../stations/decide/index.tsx')),
  report: patiently(() => import('../stations/report/index.tsx')),
}
const stations: Readonly<Record<StationName, ComponentType<StationProps>>> = {
  ask: lazy(loaders.ask),
  plan: lazy(loaders.plan),
  'rig-up': lazy(loaders['rig-up']),
  read: lazy(loaders.read),
  decide: lazy(loaders.decide),
  report: lazy(loaders.report),
}
const LabDrawer = lazy(patiently(() => import('../stations/lab/index.tsx')))

interface StudyFrameProps {
  readonly study: string
  readonly find: () => void
  readonly keys: () => void
}

/** One study: its question above, the rail of stations, and the station in which somebody works. */
export function StudyFrame({ study: id, find, keys }: StudyFrameProps): ReactNode {
  const { station, rest, search } = useAddress()
  const { value: study, refusal } = useKept<StudyView>(`/api/studies/${encodeURIComponent(id)}`)
  const question = usePaper<QuestionPaper>(studyPaper(id, 'question'))
  // While the study is read, its station is on its way too.
  useEffect(() => void loaders[station](), [station])
  useEffect(() => forgetChanges, [])
  const title = titleOf(question.content) ?? study?.name ?? ''
  useEffect(() => {
    document.title = title === '' ? 'Kufe' : `${stationWords[station].name} · ${title}`
  }, [title, station])
  useKeys(
    'Stations',
    stationNames.map((name, index) => ({
      key: String(index + 1),
      words: `${stationWords[name].name}: ${stationWords[name].about}`,
      press: () => go({ station: name }),
    })),
  )
  const Station = stations[station]
  return (
    <>
      <header className="top">
        <TopLine title={title} find={find} keys={keys} />
        <Rail study={study} station={station} />
      </header>
      <main id="work" className={`station station-${station}`} tabIndex={-1}>
        <h2 className="unseen">{stationWords[station].name}</h2>
        {refusal !== undefined && <Refused refusal={refusal} />}
        <Boundary key={station}>
          <Suspense fallback={<Waiting what={`Opening ${stationWords[station].name}`} />}>
            {study === undefined ? (
              refusal === undefined && <Waiting what="Reading the study" />
            ) : (
              <Station study={study} question={question} rest={rest} search={search} />
            )}
          </Suspense>
        </Boundary>
      </main>
      {search.lab !== undefined && (
        <Suspense fallback={<Waiting what="Opening the Lab drawer" />}>
          <LabDrawer study={study} part={search.lab} close={() => go({ search: { lab: null } })} />
        </Suspense>
      )}
    </>
  )
}
