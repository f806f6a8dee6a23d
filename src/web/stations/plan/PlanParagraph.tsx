import type { ReactNode } from 'react'
import { printQuantity } from '../../../core/quantity/index.ts'
import { QuestionQuantity } from '../../question/QuestionQuantity.tsx'
import { QuestionWording } from '../../question/QuestionWording.tsx'
import type { QuestionHold } from '../../question/useQuestion.ts'
import { Choice } from '../../sentence/Choice.tsx'
import type { LivePlan } from './livePlan.ts'
import { FixtureChoice, LowerSentence, MountSentence } from './MountSentence.tsx'

/** Names that the table of liquids knows; asked for when somebody edits one. */
const liquids = async (): Promise<readonly string[]> => (await import('../../question/knownNames.ts')).liquids

const ways = [
  { value: 'up', words: 'upwards' },
  { value: 'down', words: 'downwards' },
  { value: 'up and down', words: 'up and down again' },
] as const

interface PlanParagraphProps {
  readonly hold: QuestionHold
  readonly live: LivePlan | null
}

/** The plan as a paragraph: the method, with every quantity to be changed in place. */
export function PlanParagraph({ hold, live }: PlanParagraphProps): ReactNode {
  const { question } = hold
  const { rig, ask } = question
  const decided = ask.axialForce !== undefined && !hold.assumed('ask.axialForce')
  return (
    <>
      <p className="say">
        <MountSentence hold={hold} /> <LowerSentence hold={hold} question={question} />, with{' '}
        <QuestionQuantity
          hold={hold}
          path="ask.axialForce"
          filled={live?.suggestion.axialForce}
          least={rig.axialForce.floor}
          most={rig.axialForce.ceiling}
        />{' '}
        at <QuestionQuantity hold={hold} path="run.temperature" />
        <LiquidWords hold={hold} />; slide from <QuestionQuantity hold={hold} path="ask.slowest" most={ask.fastest} />{' '}
        to <QuestionQuantity hold={hold} path="ask.fastest" least={ask.slowest} /> in{' '}
        <QuestionQuantity hold={hold} path="ask.perDecade" /> steps a decade,{' '}
        <Choice
          name="order of the speeds"
          value={ways.find(({ value }) => value === hold.text('ask.direction'))?.value ?? 'up and down'}
          options={ways}
          assumed={hold.assumed('ask.direction')}
          change={(way) => hold.setText('ask.direction', way)}
        />
        , <QuestionQuantity hold={hold} path="ask.turns" spell={turnsInWords} /> each.
      </p>
      <p className="aside-note">
        The fixture is <FixtureChoice hold={hold} />.{' '}
        {!decided && live !== null && (
          <>
            The load of {printQuantity(live.suggestion.axialForce, 'force', { digits: 2 })} is the plan’s own choice.{' '}
          </>
        )}
        <ConfirmDefaults hold={hold} />
        {decided && (
          <button type="button" onClick={() => hold.set('ask.axialForce', undefined)}>
            Let the plan choose the load
          </button>
        )}
      </p>
    </>
  )
}

/** Sections of the question that the paragraph shows. */
const told = /^(?:fixture|pair|liquid|run)\.|^ask\.(?:slowest|fastest|perDecade|direction|turns)$/

/** One press for all defaults of the paragraph that nobody has confirmed yet. */
function ConfirmDefaults({ hold }: { readonly hold: QuestionHold }): ReactNode {
  const open = hold.paths.filter((path) => told.test(path) && hold.assumed(path))
  if (open.length === 0) return null
  return (
    <>
      <button type="button" onClick={() => hold.confirm(open)}>
        All in lighter ink is right
      </button>{' '}
    </>
  )
}

const turnsInWords = (turns: number): string =>
  turns === 1
    ? 'one whole turn'
    : turns < 1
      ? `${Number(turns.toPrecision(3))} of a turn`
      : `${Number(turns.toPrecision(3))} turns`

/** The liquid between the bodies, or that there is none. */
function LiquidWords({ hold }: { readonly hold: QuestionHold }): ReactNode {
  const { liquid } = hold.question
  if (liquid === undefined) {
    return (
      <>
        ,{' '}
        <button
          type="button"
          className="wording"
          title="Put a liquid between them"
          onClick={() => hold.setText('liquid.name', 'water')}
        >
          dry
        </button>
      </>
    )
  }
  return (
    <>
      {' '}
      in <QuestionWording hold={hold} path="liquid.name" name="liquid between them" offers={liquids} />
    </>
  )
}
