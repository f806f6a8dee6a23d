import { type ReactNode, useCallback } from 'react'
import { differencesSeen, type Plan, spokenTime, studyCost } from '../../../core/plan/index.ts'
import { printQuantity } from '../../../core/quantity/index.ts'
import { predictionFigure, replicatesFigure } from '../../../figure/index.ts'
import type { Look } from '../../frame/look.ts'
import { Picture } from '../../pictures/Picture.tsx'
import { Computed } from '../../sentence/Computed.tsx'
import { glued } from '../../sentence/glued.ts'
import { plural, spelled } from '../../sentence/spelled.ts'
import type { LivePlan } from '../plan/livePlan.ts'
import { predictionData } from '../plan/planFigures.ts'
import type { PlanHold } from '../plan/usePlan.ts'
import { whyHours, whyReplicates, whyRuns } from './askWhys.ts'

/** What the study will be able to answer, and what it costs. */
export default function Answer({ plan }: { readonly plan: PlanHold }): ReactNode {
  const { live, full, sheet } = plan
  if (live === null || full === null) return null
  const kind = full.question.ask.kind ?? 'rank'
  return (
    <section aria-label="What the study will answer" className="answer">
      <h3>What the study will be able to answer</h3>
      {sentencesOf(full).map((sentence) => (
        <p key={sentence} className="say">
          {glued(sentence)}
        </p>
      ))}
      <CostSentence full={full} each={sheet?.totals.time ?? null} />
      {kind === 'rank' || kind === 'feel' ? <SeenPicture full={full} /> : <ExpectedPicture live={live} full={full} />}
      <Order full={full} />
    </section>
  )
}

const percent = (share: number): string => printQuantity(share, 'ratio', { digits: 2, unit: '%' })

function CostSentence({ full, each }: { readonly full: Plan; readonly each: number | null }): ReactNode {
  if (each === null) return <p className="say">{full.sentences.believable}</p>
  const cost = studyCost(full, each)
  const { samples } = full.question.deciding
  if (cost.replicates === null) {
    return (
      <p className="say">
        No sensible number of replicates answers this: let a larger difference do, or lower the scatter between
        replicates.
      </p>
    )
  }
  return (
    <p className="say">
      It costs{' '}
      <Computed why={whyReplicates(full, cost)}>
        {spelled(cost.replicates)} {plural(cost.replicates, 'replicate')}
      </Computed>{' '}
      of {samples.length === 1 ? samples[0] : `each of ${spelled(samples.length)} samples`},{' '}
      <Computed why={whyRuns(full, cost)}>
        {cost.runs} {plural(cost.runs, 'record')}
      </Computed>{' '}
      on {spelled(cost.days)} {plural(cost.days, 'day')} and{' '}
      <Computed why={whyHours(cost, each)}>{spokenTime(cost.time)}</Computed> at the rig.
    </p>
  )
}

/** The answer before anything is measured, by the kind of question. */
function sentencesOf({ question, decision, regime, wear, sentences }: Plan): readonly string[] {
  const { ask, deciding } = question
  const source = deciding.repeatabilityFrom === 'measured' ? 'as measured' : 'assumed until you measure yours'
  switch (ask.kind ?? 'rank') {
    case 'rank':
    case 'feel':
      return decision.sentences
    case 'limit':
      return [
        `It will say whether friction keeps the limit, if the truth lies ${percent(deciding.difference)} inside it, in ${percent(deciding.power)} of all cases, at a scatter of ${percent(deciding.repeatability)} between replicates (${source}); a sample at the limit passes in ${percent(deciding.significance)}.`,
        sentences.believable,
      ]
    case 'regimes':
      return [...regime.sentences, sentences.believable]
    case 'last':
      return [
        wear.distance === null
          ? 'Nobody said how fast the bodies wear, so the plan cannot say whether they last: the record itself will. Give a wear rate under “The two bodies” of the plan to see it before.'
          : `By the wear rates given the contact is worn beyond what is allowed after ${printQuantity(wear.distance, 'length', { digits: 2 })}; one record slides ${printQuantity(wear.perRecord, 'length', { digits: 2 })}.`,
        'Friction over the distance will show where it begins to change; three replicates tell how much that distance scatters.',
      ]
  }
}

function SeenPicture({ full }: { readonly full: Plan }): ReactNode {
  const draw = useCallback(
    (width: number, palette: Look): string => {
      const seen = differencesSeen(full.question)
      const needed = full.decision.replicates?.replicates ?? null
      return replicatesFigure(
        {
          title: 'What more replicates buy',
          caption: `two samples, seen in ${percent(full.question.deciding.power)} of all cases`,
          seen,
          wanted: full.question.deciding.difference,
          enough: needed === null ? null : (seen.find(({ replicates }) => replicates >= needed)?.replicates ?? null),
        },
        { width, palette },
      )
    },
    [full],
  )
  return <Picture draw={draw} />
}

function ExpectedPicture({ live, full }: { readonly live: LivePlan; readonly full: Plan }): ReactNode {
  const draw = useCallback(
    (width: number, palette: Look): string => predictionFigure(predictionData(live, full), { width, palette }),
    [live, full],
  )
  return <Picture draw={draw} />
}

/** The order of the runs, day by day; the same question and seed give the same. */
function Order({ full }: { readonly full: Plan }): ReactNode {
  const { order, days } = full.decision
  const kind = full.question.ask.kind ?? 'rank'
  if (order.length === 0 || (kind !== 'rank' && kind !== 'feel')) return null
  return (
    <>
      <h3>In this order, drawn by lot within blocks</h3>
      <ol className="order">
        {Array.from({ length: days }, (_, index) => index + 1).map((day) => (
          <li key={day}>
            <span className="quiet">Day {day}</span>{' '}
            {order
              .filter((run) => run.day === day)
              .map(({ sample, kind: run }) => (run === 'checkStandard' ? `(${sample})` : sample))
              .join(' · ')}
          </li>
        ))}
      </ol>
    </>
  )
}
