import { type ReactNode, useState } from 'react'
import { spokenShare } from '../../../core/decide/index.ts'
import type { Comparison, ReplicateCurve, SampleCurve } from '../../../core/terms/index.ts'
import type { ReplicatesAnswer } from '../../../server/contract/index.ts'
import { setWriter, useWriter } from '../../api/writer.ts'
import { Link } from '../../frame/Link.tsx'
import { glued } from '../../sentence/glued.ts'
import { useEdits } from '../../work/useEdits.ts'
import type { ComparisonHold } from './useComparison.ts'

interface ReplicateListProps {
  readonly hold: ComparisonHold
  readonly gathered: ReplicatesAnswer
}

/** Every replicate of every sample: how far it lies from its mean, what stands out, and a way to take it out, for a reason. */
export function ReplicateList({ hold, gathered }: ReplicateListProps): ReactNode {
  const { comparison } = hold
  if (comparison === undefined) return null
  return (
    <section aria-labelledby="replicates-heading">
      <h2 id="replicates-heading">Replicates</h2>
      {comparison.samples.map((sample) => (
        <Sample key={sample.sample} sample={sample} comparison={comparison} hold={hold} />
      ))}
      {gathered.left.length > 0 && (
        <p className="quiet">Left aside: {gathered.left.map(({ name, why }) => `${name} (${why})`).join(', ')}.</p>
      )}
    </section>
  )
}

interface SampleProps {
  readonly sample: SampleCurve
  readonly comparison: Comparison
  readonly hold: ComparisonHold
}

function Sample({ sample, comparison, hold }: SampleProps): ReactNode {
  const { repeatability, used } = sample
  const scatter =
    repeatability === null
      ? 'one replicate tells no scatter'
      : glued(
          `scatter ${spokenShare(repeatability.pooled)}, from ${spokenShare(repeatability.low)} to ${spokenShare(repeatability.high)}`,
        )
  return (
    <section aria-label={sample.sample}>
      <h3>
        {sample.sample}{' '}
        <span className="quiet">
          {used === sample.replicates.length ? used : `${used} of ${sample.replicates.length}`}
          {used === 1 ? ' replicate' : ' replicates'}; {scatter}
        </span>
      </h3>
      <ul className="replicates">
        {sample.replicates.map((one) => (
          <Row key={one.record} one={one} off={offMean(one, sample, comparison)} hold={hold} />
        ))}
      </ul>
    </section>
  )
}

/** Mean deviation from the mean of the sample over the speeds. */
function offMean({ friction }: ReplicateCurve, { mean }: SampleCurve, { scale }: Comparison): string {
  const off = friction
    .map((value, i) => (scale === 'ratio' ? value / mean[i] - 1 : value - mean[i]))
    .filter(Number.isFinite)
  const level = off.reduce((sum, value) => sum + value, 0) / off.length
  const size = scale === 'ratio' ? spokenShare(Math.abs(level)) : Math.abs(level).toFixed(4)
  return `${level < 0 ? '−' : '+'}${size}`
}

interface RowProps {
  readonly one: ReplicateCurve
  readonly off: string
  readonly hold: ComparisonHold
}

function Row({ one, off, hold }: RowProps): ReactNode {
  const [asking, setAsking] = useState(false)
  const { decision, paper } = hold
  const edit = useEdits(paper)
  const { record, name, removed, flags } = one
  const others = decision.removals.filter((removal) => removal.record !== record)
  return (
    <li className={removed === null ? (flags.length > 0 ? 'flagged' : undefined) : 'removed'}>
      <p>
        <Link to={{ station: 'read', rest: [record.slice(0, 12)] }}>{name}</Link> <span className="off">{off}</span>{' '}
        {removed === null && !asking && (
          <button type="button" onClick={() => setAsking(true)} aria-label={`take out ${name}`}>
            take out
          </button>
        )}
        {removed !== null && (
          <button
            type="button"
            aria-label={`put back ${name}`}
            onClick={() => edit({ ...decision, removals: others }, `${name} put back`)}
          >
            put back
          </button>
        )}
      </p>
      {removed !== null && (
        <p>
          Taken out by {removed.by}: {removed.why}
        </p>
      )}
      {flags.map(({ sentence }) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {asking && (
        <Reason
          name={name}
          leave={() => setAsking(false)}
          keep={(by, why) => {
            setAsking(false)
            edit({ ...decision, removals: [...others, { record, by, why }] }, `${name} taken out: ${why}`)
          }}
        />
      )}
    </li>
  )
}

interface ReasonProps {
  readonly name: string
  readonly keep: (by: string, why: string) => void
  readonly leave: () => void
}

/** Nothing is taken out without who and why. */
function Reason({ name, keep, leave }: ReasonProps): ReactNode {
  const writer = useWriter()
  const [by, setBy] = useState(writer)
  const [why, setWhy] = useState('')
  const whole = by.trim() !== '' && why.trim() !== ''
  return (
    <form
      className="reason"
      onSubmit={(event) => {
        event.preventDefault()
        if (!whole) return
        if (by.trim() !== writer) setWriter(by.trim())
        keep(by.trim(), why.trim())
      }}
    >
      <label>
        Why {name} does not count
        {/* biome-ignore lint/a11y/noAutofocus: the person has just opened it to type */}
        <input autoFocus value={why} maxLength={300} onChange={(event) => setWhy(event.target.value)} />
      </label>
      <label>
        Your initials
        <input value={by} maxLength={12} size={4} onChange={(event) => setBy(event.target.value)} />
      </label>
      <p>
        <button type="submit" disabled={!whole}>
          Take it out
        </button>{' '}
        <button type="button" onClick={leave}>
          Leave it in
        </button>
      </p>
    </form>
  )
}
