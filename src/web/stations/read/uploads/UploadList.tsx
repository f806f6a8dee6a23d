import { lazy, type ReactNode, Suspense } from 'react'
import { Link } from '../../../frame/Link.tsx'
import { Refused } from '../../../frame/Refused.tsx'
import { Waiting } from '../../../frame/Waiting.tsx'
import { Problems } from './Problems.tsx'
import { phaseWords, type Upload } from './upload.ts'
import { again, clearKept, dropUpload, type KeptWith, keepUpload, say, stopUpload } from './uploadDesk.ts'
import { Writing } from './Writing.tsx'

/** Menus come with a kit of controls that nobody needs before there are columns to mend. */
const ColumnTable = lazy(() => import('./ColumnTable.tsx'))

interface UploadListProps {
  readonly uploads: readonly Upload[]
  /** Key of the file whose columns lie open. */
  readonly open: number | null
  /** What is kept with them; undefined while there is no setup that holds together. */
  readonly kept: KeptWith | undefined
}

/** Every dropped file with how far it is, what it is of, and what can be done with it. */
export function UploadList({ uploads, open, kept: along }: UploadListProps): ReactNode {
  const ready = uploads.filter(({ phase, look }) => phase === 'asking' && (look?.problems.length ?? 0) === 0)
  const kept = uploads.filter(({ phase }) => phase === 'kept')
  return (
    <>
      <ul className="uploads" aria-label="Files on their way in">
        {uploads.map((upload) => (
          <UploadRow key={upload.key} upload={upload} open={open === upload.key} kept={along} />
        ))}
      </ul>
      <p className="upload-all">
        {ready.length > 1 && (
          <button
            type="button"
            className="main-act"
            disabled={along === undefined}
            onClick={() => {
              if (along !== undefined) for (const { key } of ready) keepUpload(key, along)
            }}
          >
            Keep all {ready.length}
          </button>
        )}
        {kept.length > 0 && (
          <button type="button" onClick={() => clearKept(kept[0].study)}>
            Take {kept.length === 1 ? 'the kept one' : `the ${kept.length} kept ones`} off this list
          </button>
        )}
      </p>
    </>
  )
}

interface UploadRowProps {
  readonly upload: Upload
  readonly open: boolean
  readonly kept: KeptWith | undefined
}

function UploadRow({ upload, open, kept }: UploadRowProps): ReactNode {
  const { key, file, phase, look, refusal, record } = upload
  const problems = look?.problems ?? []
  return (
    <li className="upload">
      <div className="upload-line">
        <b className="file-name">{file.name}</b>
        <span role="status">{stateWords(upload)}</span>
        <UploadProgress upload={upload} />
        <span className="upload-acts">
          {phase === 'asking' && (
            <>
              <Link to={{ rest: open ? [] : ['add', key] }} aria-expanded={open}>
                {open ? 'Hide the columns' : 'Columns'}
              </Link>
              <button
                type="button"
                disabled={kept === undefined || problems.length > 0}
                title={kept === undefined ? 'Choose a setup first' : undefined}
                onClick={() => kept !== undefined && keepUpload(key, kept)}
              >
                Keep
              </button>
            </>
          )}
          {record !== null && <Link to={{ rest: [record.slice(0, 12)] }}>Open it</Link>}
          {(phase === 'failed' || phase === 'stopped') && (
            <button type="button" onClick={() => again(key)}>
              Send it again
            </button>
          )}
          {(phase === 'sending' || phase === 'keeping' || phase === 'looking' || phase === 'inLine') && (
            <button type="button" onClick={() => stopUpload(key)}>
              Stop
            </button>
          )}
          {phase !== 'sending' && phase !== 'keeping' && phase !== 'inLine' && (
            <button type="button" aria-label={`Take ${file.name} off the list`} onClick={() => dropUpload(key)}>
              {phase === 'kept' ? 'Off the list' : 'Leave it out'}
            </button>
          )}
        </span>
      </div>
      {phase === 'asking' && <SaidFields upload={upload} />}
      {refusal !== null && <Refused refusal={refusal} />}
      {problems.length > 0 && <Problems problems={problems} />}
      {look?.known != null && phase === 'asking' && (
        <p className="notice">
          The lab has these very bytes already: <Link to={{ rest: [look.known.slice(0, 12)] }}>that record</Link>.
        </p>
      )}
      {(open || problems.length > 0) && look !== null && (
        <Suspense fallback={<Waiting what="Laying out the columns" />}>
          <Writing upload={upload} />
          <ColumnTable upload={upload} look={look} />
        </Suspense>
      )}
    </li>
  )
}

function stateWords({ phase, look, progress, sent }: Upload): string {
  if (phase === 'asking' && (look?.problems.length ?? 0) > 0) return 'cannot be read yet'
  if (phase === 'asking' && look?.rows != null) return `${phaseWords.asking}: ${look.rows.toLocaleString('en')} rows`
  if (phase === 'sending') return `${phaseWords.sending}, ${Math.round(100 * sent)} %`
  if (phase === 'keeping' && progress !== null) return progress.doing
  return phaseWords[phase]
}

function UploadProgress({ upload: { phase, sent, progress, file } }: { readonly upload: Upload }): ReactNode {
  if (phase === 'sending') return <progress value={sent} max={1} aria-label={`${file.name}, sent`} />
  if (phase !== 'keeping') return null
  const known = progress !== null && progress.of > 0
  return (
    <progress
      value={known ? progress.done : undefined}
      max={known ? progress.of : undefined}
      aria-label={`${file.name}, reduced`}
    />
  )
}

/** What the file is of: guessed from its name, changed in place. */
function SaidFields({ upload: { key, said, file } }: { readonly upload: Upload }): ReactNode {
  return (
    <p className="said-fields">
      <label>
        sample{' '}
        <input
          value={said.sample}
          maxLength={200}
          size={Math.max(8, said.sample.length)}
          onChange={(event) => say(key, { sample: event.target.value })}
          aria-label={`Sample of ${file.name}`}
        />
      </label>
      <label>
        replicate{' '}
        <input
          type="number"
          min={1}
          max={9999}
          value={said.replicate ?? ''}
          aria-label={`Replicate of ${file.name}`}
          onChange={(event) => {
            const number = Number.parseInt(event.target.value, 10)
            say(key, { replicate: number >= 1 ? number : null })
          }}
        />
      </label>
      <label>
        mounted by{' '}
        <input
          value={said.mountedBy}
          maxLength={80}
          size={6}
          onChange={(event) => say(key, { mountedBy: event.target.value })}
          aria-label={`Who mounted ${file.name}`}
        />
      </label>
      <label>
        ball set{' '}
        <input
          value={said.ballSet}
          maxLength={80}
          size={6}
          onChange={(event) => say(key, { ballSet: event.target.value })}
          aria-label={`Ball set of ${file.name}`}
        />
      </label>
    </p>
  )
}
