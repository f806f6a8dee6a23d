import { lazy, type ReactNode, Suspense, useMemo, useState } from 'react'
import { printQuantity } from '../../../../core/quantity/index.ts'
import { type ChannelName, channelNames, type RecordStretch, type Setup } from '../../../../core/terms/index.ts'
import { dryRegimes, wetRegimes } from '../../../../figure/index.ts'
import type { RecordAnswer, RecordResult, StretchesAnswer, TraceAnswer } from '../../../../server/contract/index.ts'
import { useKept } from '../../../api/kept.ts'
import { go } from '../../../frame/address.ts'
import { Link } from '../../../frame/Link.tsx'
import { Refused } from '../../../frame/Refused.tsx'
import type { StationProps } from '../../../frame/stationProps.ts'
import { Waiting } from '../../../frame/Waiting.tsx'
import { useKeys } from '../../../work/keys.ts'
import { tilesOf } from '../strip/fetchTile.ts'
import { Strip } from '../strip/Strip.tsx'
import type { View } from '../strip/view.ts'
import type { StepWindow } from '../strip/WindowHandles.tsx'
import { BeyondDoor } from './BeyondDoor.tsx'
import { LinkedCurve } from './LinkedCurve.tsx'
import { ChangeSetup, MissingSetup } from './MissingSetup.tsx'
import { RemarkList } from './RemarkList.tsx'
import { StepPart } from './StepPart.tsx'
import { TurnsPart } from './TurnsPart.tsx'
import { type MendsHold, useMends } from './useMends.ts'

/** Planning is a large part of the program; most looks at a record do without. */
const PlanPart = lazy(() => import('./PlanPart.tsx'))

interface RecordPageProps extends Pick<StationProps, 'study' | 'question' | 'search'> {
  readonly record: string
  readonly step: string | undefined
}

/** One record: strip above, curve below, linked; a point opens; remarks are answered; the plan is held against it. */
export function RecordPage(props: RecordPageProps): ReactNode {
  const { value, refusal, waiting } = useKept<RecordAnswer>(`/api/records/${props.record}`)
  return (
    <div className="record-page">
      <p>
        <Link to={{ rest: [] }}>All records of the study</Link>
      </p>
      {refusal !== undefined && <Refused refusal={refusal} />}
      {value === undefined && waiting && <Waiting what="Reading the record" />}
      {value !== undefined &&
        (value.result === null ? (
          <Unreduced answer={value} {...props} />
        ) : (
          <Reduced answer={value} result={value.result} {...props} />
        ))}
    </div>
  )
}

type Answered = RecordPageProps & { readonly answer: RecordAnswer }

const Unreduced = ({ answer, study }: Answered): ReactNode => (
  <>
    <h3>{answer.record.name}</h3>
    <MissingSetup answer={answer} study={study.id} />
  </>
)

function Reduced({
  answer,
  result,
  record,
  step: said,
  study,
  question,
  search,
}: Answered & { readonly result: RecordResult }): ReactNode {
  const { points, window, remarks } = result
  const [hovered, setHovered] = useState<number | null>(null)
  const hold = useMends(answer.record.id, answer.papers)
  const { value: trace } = useKept<TraceAnswer>(`/api/records/${record}/trace?pixels=16`)
  const { value: found } = useKept<StretchesAnswer>(`/api/records/${record}/stretches`)
  const lit = said !== undefined && points.some((point) => point.step === Number(said)) ? Number(said) : null
  const { from = null, to = null, turns = null, view = null, beyond = null } = search
  const sight = { from, to, turns, view, beyond }
  const light = (step: number): void => {
    if (points.some((point) => point.step === step))
      go({ rest: [record, step], search: sight }, lit === null ? 'push' : 'replace')
  }
  const along = (by: number): void => {
    const index = points.findIndex(({ step }) => step === lit)
    const next = points[Math.min(points.length - 1, Math.max(0, index + by))]
    if (next !== undefined) light(next.step)
  }
  useKeys('Read', [
    { key: 'ArrowRight', words: 'next point', press: () => along(1) },
    { key: 'ArrowLeft', words: 'point before', press: () => along(-1) },
    { key: 'Escape', words: 'close the point', press: () => go({ rest: [record], search: sight }) },
  ])
  const source = useStripSource(record, trace)
  const names = useMemo(() => channelNames.filter((name) => trace?.names.includes(name)), [trace])
  const stretches = useMemo(() => found?.stretches ?? [], [found])
  const data = useMemo(() => curveData(answer, result), [answer, result])
  const all = useMemo(() => [...remarks, ...points.flatMap((point) => point.remarks)], [remarks, points])
  return (
    <div className="two-columns">
      <div className="record-words">
        <Facts answer={answer} result={result} changing={search.setup !== undefined} />
        {search.setup !== undefined && (
          <ChangeSetup answer={answer} done={() => go({ search: { setup: null } }, 'replace')} />
        )}
        <p className="say">
          {window.sentence} {window.plateau.sentence}
        </p>
        <RemarkList record={record} remarks={all} hold={hold} />
        {answer.record.study === study.id && question.version > 0 && (
          <Suspense fallback={<Waiting what="Holding the plan against it" />}>
            <PlanPart paper={question} points={points} record={record} />
          </Suspense>
        )}
      </div>
      <div className="pictures">
        {source === undefined ? (
          <Waiting what="Reading the raw channels" />
        ) : (
          <Strip
            {...{ source, names, stretches, lit, light, hovered, hover: setHovered }}
            begin={sightOf(search)}
            seen={(view) => keepSight(view, source.whole)}
            window={lit === null ? undefined : stepWindow(lit, stretches, hold)}
          />
        )}
        <LinkedCurve {...{ data, lit, light, hovered }} hover={setHovered} />
        {lit !== null && <StepPart record={record} step={lit} hold={hold} papers={answer.papers} />}
        {points.some(({ turns }) => turns >= 1) && (
          <TurnsPart
            record={record}
            shown={search.turns}
            view={search.view}
            hasGap={names.includes('gap' satisfies ChannelName)}
          />
        )}
        <BeyondDoor record={record} open={search.beyond === 'open'} />
      </div>
    </div>
  )
}

/** The same object for the same record, also when it is reduced again: the raw bytes never change. */
function useStripSource(record: string, trace: TraceAnswer | undefined) {
  const known = trace !== undefined
  const [from, to] = trace?.record ?? [0, 1]
  const rows = trace?.rows ?? 0
  return useMemo(
    () => (known ? { whole: { from, to }, rows, fetchTile: tilesOf(record) } : undefined),
    [known, from, to, rows, record],
  )
}

/** The window of a step as its stretches tell it, with what happens when its edges are moved. */
function stepWindow(step: number, stretches: readonly RecordStretch[], { move }: MendsHold): StepWindow | undefined {
  const own = stretches.filter((one) => one.step === step)
  const counted = own.filter(({ kind }) => kind !== 'warmUp')
  if (own.length === 0 || counted.length === 0) return undefined
  const before = { from: counted[0].from, to: counted[counted.length - 1].to }
  return {
    step,
    ...before,
    least: own[0].from,
    most: own[own.length - 1].to,
    preview: () => undefined,
    moved: (from, to) => move(step, { from, to }, before),
  }
}

/** The stretch that an address shows. */
function sightOf({ from, to }: Readonly<Record<string, string>>): { from: number; to: number } | undefined {
  const [begin, end] = [Number(from), Number(to)]
  return from !== undefined && begin < end ? { from: begin, to: end } : undefined
}

/** The address follows the hand, so that a stretch can be linked; the whole record needs no words. */
function keepSight({ from, to }: View, whole: View): void {
  const all = from === whole.from && to === whole.to
  const print = (time: number): string => String(Number(time.toPrecision(7)))
  go({ search: { from: all ? null : print(from), to: all ? null : print(to) } }, 'replace')
}

function curveData({ record, setup }: RecordAnswer, { points, curve, window }: RecordResult) {
  const read: Setup | undefined = setup?.read
  const regimes = read !== undefined && read.liquid === undefined ? dryRegimes : wetRegimes
  return { title: `Friction against sliding speed: ${record.name}`, points, curve, window, regimes }
}

interface FactsProps {
  readonly answer: RecordAnswer
  readonly result: RecordResult
  /** Its setup lies open below. */
  readonly changing: boolean
}

function Facts({ answer: { record, setup }, result, changing }: FactsProps): ReactNode {
  const { sample, replicate, mountedBy, ballSet, day } = record
  const facts = [
    sample === null ? [] : [`sample ${sample}${replicate === null ? '' : `, replicate ${replicate}`}`],
    mountedBy === null ? [] : [`mounted by ${mountedBy}`],
    ballSet === null ? [] : [`ball set ${ballSet}`],
    day === null ? [] : [day],
    [`${result.record.rows.toLocaleString('en')} rows of ${result.record.file}`],
    setup?.read.run.axialForce === undefined ? [] : [printQuantity(setup.read.run.axialForce, 'force', { digits: 3 })],
  ].flat()
  return (
    <>
      <h3>{record.name}</h3>
      <p className="quiet">
        {facts.join(' · ')}
        {setup !== null && !changing && (
          <>
            {' · '}
            <Link to={{ search: { setup: 'text' } }}>its setup</Link>
          </>
        )}
      </p>
    </>
  )
}
