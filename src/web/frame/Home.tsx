import { type FormEvent, type ReactNode, useState } from 'react'
import type { StudiesAnswer } from '../../server/contract/index.ts'
import { refresh, useKept } from '../api/kept.ts'
import { Refusal, request } from '../api/request.ts'
import type { LabView, StudyBrief } from '../api/study.ts'
import { writer } from '../api/writer.ts'
import { go } from './address.ts'
import { Link } from './Link.tsx'
import { Refused } from './Refused.tsx'
import { Tools } from './TopLine.tsx'
import { Waiting } from './Waiting.tsx'

interface HomeProps {
  readonly find: () => void
  readonly keys: () => void
}

/** The lab: its studies, and a place to begin one. */
export function Home({ find, keys }: HomeProps): ReactNode {
  const lab = useKept<LabView>('/api/lab')
  const list = useKept<StudiesAnswer>('/api/studies')
  const studies = list.value?.studies ?? []
  return (
    <>
      <header className="top">
        <div className="top-line">
          <span className="home">Kufe</span>
          <h1>{lab.value?.name ?? 'The lab'}</h1>
          <div className="tools">
            <Tools find={find} keys={keys} />
          </div>
        </div>
      </header>
      <main id="work" className="home-page">
        <p className="say">
          A study follows one question from asking to report: which of these slips more easily, and at which speeds.
          {lab.value?.demo === true && ' What this lab holds is invented data that came with the program.'}
        </p>
        <h2 className="onward">Studies</h2>
        {list.refusal !== undefined && <Refused refusal={list.refusal} />}
        {list.waiting && <Waiting what="Reading the studies" />}
        <ul className="studies">
          {studies.map(({ id, name, records }) => (
            <li key={id}>
              <Link to={{ study: id }}>{name}</Link>
              <span className="quiet">
                {' '}
                {records} {records === 1 ? 'record' : 'records'}
              </span>
            </li>
          ))}
        </ul>
        {studies.length > 0 && (
          <p className="onward">
            <Link to={{ study: studies[0].id, search: { tour: 1 } }}>
              {lab.value?.demo === true
                ? 'Show me around in two minutes, on invented data'
                : 'Show me around in two minutes'}
            </Link>
          </p>
        )}
        <NewStudy />
      </main>
    </>
  )
}

function NewStudy(): ReactNode {
  const [name, setName] = useState('')
  const [refusal, setRefusal] = useState<Refusal>()
  const begin = async (event: FormEvent): Promise<void> => {
    event.preventDefault()
    try {
      const made = await request<StudyBrief>('/api/studies', { method: 'POST', body: { name, by: writer() } })
      refresh('/api/studies')
      go({ study: made.id, station: 'ask' })
    } catch (error) {
      if (error instanceof Refusal) setRefusal(error)
    }
  }
  return (
    <form onSubmit={begin} className="new-study">
      <label>
        Begin a study called{' '}
        <input value={name} onChange={(event) => setName(event.target.value)} required maxLength={200} size={32} />
      </label>{' '}
      <button type="submit">Begin</button>
      {refusal !== undefined && <Refused refusal={refusal} />}
    </form>
  )
}
