import { type ReactNode, useState } from 'react'
import type { HistoryAnswer } from '../../../server/contract/index.ts'
import { useKept } from '../../api/kept.ts'
import { Waiting } from '../../frame/Waiting.tsx'

/** The newest changes first; nothing here is ever edited. */
export function HistoryPart(): ReactNode {
  const [count, setCount] = useState(50)
  const { value } = useKept<HistoryAnswer>(`/api/lab/history?newest=true&limit=${count}`)
  if (value === undefined) return <Waiting what="Reading the history" />
  return (
    <>
      <ol className="drawer-list">
        {value.entries.map(({ what, kind, id, version, change }) => (
          <li key={`${change.number} ${kind} ${id} ${version}`}>
            <p>
              <b>{change.who}</b> {what} {kindWords[kind] ?? kind} {shortened(id)}
              {version !== null && version > 1 ? `, version ${version}` : ''}
            </p>
            <p className="quiet">
              <time dateTime={change.at}>{change.at.slice(0, 16).replace('T', ' ')}</time>
              {change.why === '' ? '' : `: ${change.why}`}
            </p>
          </li>
        ))}
      </ol>
      {value.entries.length >= count && count < 1000 && (
        <button type="button" onClick={() => setCount(Math.min(1000, 4 * count))}>
          Older changes
        </button>
      )}
    </>
  )
}

const kindWords: Readonly<Record<string, string>> = {
  record: 'the record',
  raw: 'the bytes of',
  study: 'the study',
  sample: 'the sample',
  setup: 'the setup',
  result: 'the result',
  paper: 'the paper',
  about: 'the name of the lab',
}

/** Checksums need their first letters only. */
const shortened = (id: string): string => id.replaceAll(/[0-9a-f]{40,64}/g, (sum) => sum.slice(0, 8))
