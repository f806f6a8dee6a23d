import type { ReactNode } from 'react'
import { spokenTime } from '../../../core/plan/index.ts'
import { type Dimension, printQuantity } from '../../../core/quantity/index.ts'
import { Term } from '../../glossary/Term.tsx'
import { Computed } from '../../sentence/Computed.tsx'
import { glued } from '../../sentence/glued.ts'
import { plural, spelled } from '../../sentence/spelled.ts'
import type { LivePlan } from './livePlan.ts'
import {
  whyContact,
  whyDepth,
  whyDistance,
  whyLambda,
  whyLoad,
  whyPressure,
  whyRecordTime,
  whyTime,
  whyUncertainty,
  whyWear,
} from './planWhys.ts'
import type { PlanHold } from './usePlan.ts'

const say = (value: number, dimension: Dimension, digits = 2): string =>
  glued(printQuantity(value, dimension, { digits }))

/** What follows from the paragraph, in the same voice; every computed number can be asked why. */
export default function Consequences({ plan }: { readonly plan: PlanHold }): ReactNode {
  const { live, full, sheet } = plan
  if (live === null) return null
  return (
    <section className="consequences" aria-label="What follows">
      <h3>What follows</h3>
      <ContactSentence live={live} />
      <FilmSentence plan={plan} />
      {live.points.length === 0 ? (
        <p className="say">{full?.sentences.believable ?? 'No speed of the question can be measured at this load.'}</p>
      ) : (
        <p className="say">
          The sweep has {live.points.length} {plural(live.points.length, 'step')}, takes{' '}
          <Computed why={whyTime(live)}>{spokenTime(timeOf(live))}</Computed> and slides{' '}
          <Computed why={whyDistance(live)}>{say(distanceOf(live), 'length')}</Computed>
          {sheet !== null && (
            <>
              ; with mounting, zeroes and checks a record takes{' '}
              <Computed why={whyRecordTime(sheet)}>{spokenTime(sheet.totals.time)}</Computed>
            </>
          )}
          . A point will be known to{' '}
          <Computed why={whyUncertainty(live)}>{say(middleUncertainty(live), 'ratio')}</Computed>.
        </p>
      )}
      <WearSentence plan={plan} />
      {full !== null && (
        <>
          {live.points.length > 0 && <p className="say">{glued(full.sentences.believable)}</p>}
          <Sentences heading="May the contact law be trusted?" texts={[full.contact.hertz, ...extra(full)]} />
          <Sentences heading="Traded away" texts={full.sentences.trades} />
          <Sentences heading="What whole turns cost" texts={full.sentences.turnBudget} />
          <Sentences heading="Beyond the rig" texts={full.warnings.map(({ what, mend }) => `${what} ${mend}`)} />
          <Sentences heading="Taken from tables" texts={plan.taken} />
          <Sentences heading="Not said, and so not judged" texts={full.sentences.notJudged} />
        </>
      )}
    </section>
  )
}

const extra = ({ contact, layer, flash }: NonNullable<PlanHold['full']>): readonly string[] => [
  ...contact.doubts.map(({ sentence }) => sentence),
  ...(layer === null ? [] : [layer.sentence]),
  ...(flash === null ? [] : [flash.sentence]),
]

const timeOf = ({ points }: LivePlan): number => points.reduce((sum, { dwell }) => sum + dwell, 0)
const distanceOf = ({ points, basis }: LivePlan): number =>
  points.reduce((sum, { distance }) => sum + distance, basis.question.ask.conditioningDistance)

function middleUncertainty({ points }: LivePlan): number {
  const sorted = points.map(({ uncertainty }) => uncertainty.total).sort((a, b) => a - b)
  return sorted[sorted.length >> 1]
}

function ContactSentence({ live }: { readonly live: LivePlan }): ReactNode {
  const { contact, basis } = live
  const thickness = basis.question.pair.lower.thickness
  const { contacts } = basis.geometry
  return (
    <p className="say">
      {contacts === 1 ? 'The contact' : `Each of the ${spelled(contacts)} contacts`} carries{' '}
      <Computed why={whyLoad(live)}>{say(contact.load, 'force', 3)}</Computed>
      {contact.peakPressure !== null && contact.contactRadius !== null && contact.approach !== null && (
        <>
          , at a peak <Term word="pressure">pressure</Term> of{' '}
          <Computed why={whyPressure(live)}>{say(contact.peakPressure, 'pressure')}</Computed> over a spot{' '}
          <Computed why={whyContact(live)}>{say(2 * contact.contactRadius, 'length', 3)}</Computed> across, and sinks in{' '}
          <Computed why={whyDepth(live)}>{say(contact.approach, 'length')}</Computed>
          {thickness !== undefined && (
            <>, {glued(`${say(contact.approach / thickness, 'ratio')} of the ${say(thickness, 'length', 3)} layer`)}</>
          )}
        </>
      )}
      {contact.peakPressure === null && contact.meanPressure !== null && (
        <>
          , at a mean <Term word="pressure">pressure</Term> of{' '}
          <Computed why={whyPressure(live)}>{say(contact.meanPressure, 'pressure')}</Computed>
        </>
      )}
      .
    </p>
  )
}

function FilmSentence({ plan }: { readonly plan: PlanHold }): ReactNode {
  const { live, full } = plan
  if (live === null) return null
  const sorted = [...live.points].sort((a, b) => a.slidingSpeed - b.slidingSpeed)
  const [slow, fast] = [sorted[0], sorted[sorted.length - 1]]
  const slowLambda = slow?.friction.lambda ?? null
  const fastLambda = fast?.friction.lambda ?? null
  if (slowLambda === null || fastLambda === null) {
    return (
      <p className="say">
        {live.basis.question.liquid === undefined
          ? 'It slides dry: friction is expected to be that of the surfaces throughout.'
          : 'No film can be predicted: that takes a round contact, a viscosity, and the roughness and stiffness of both bodies.'}
      </p>
    )
  }
  const two = (value: number): string => String(Number(value.toPrecision(2)))
  const words = ({ value, low, high }: typeof slowLambda): string => `${two(value)} (${two(low)} to ${two(high)})`
  return (
    <p className="say">
      The film is <Term word="lambda">λ</Term> ={' '}
      <Computed why={whyLambda(live, full, 'slowest')}>{words(slowLambda)}</Computed> at{' '}
      {say(slow.slidingSpeed, 'velocity')} and{' '}
      <Computed why={whyLambda(live, full, 'fastest')}>{words(fastLambda)}</Computed> at{' '}
      {say(fast.slidingSpeed, 'velocity')}
      {full !== null && full.regime.of > 0 && (
        <>
          ; {full.regime.surviving} of {full.regime.of} steps keep their regime over the whole interval
        </>
      )}
      .
    </p>
  )
}

function WearSentence({ plan }: { readonly plan: PlanHold }): ReactNode {
  const { live, full } = plan
  if (live === null || full === null) return null
  const { coupling } = live.suggestion
  const { distance, runsPerBallSet } = full.wear
  return (
    <p className="say">
      {distance === null ? (
        'No wear rate is known: fresh bodies for each record.'
      ) : (
        <>
          One set of bodies bears <Computed why={whyWear(live, full)}>{say(distance, 'length')}</Computed>, so{' '}
          {runsPerBallSet} {plural(runsPerBallSet, 'record')}; another replicate takes fresh ones all the same.
        </>
      )}{' '}
      Take a {coupling} <Term word="coupling">coupling</Term>.
    </p>
  )
}

const Sentences = ({ heading, texts }: { readonly heading: string; readonly texts: readonly string[] }): ReactNode =>
  texts.length === 0 ? null : (
    <>
      <h3>{heading}</h3>
      {texts.map((text) => (
        <p key={text}>{glued(text)}</p>
      ))}
    </>
  )
