import type { ReactNode } from 'react'
import type { AskKind } from '../../../core/plan/index.ts'
import { QuestionQuantity } from '../../question/QuestionQuantity.tsx'
import type { QuestionHold } from '../../question/useQuestion.ts'
import { Choice } from '../../sentence/Choice.tsx'
import { SampleNames } from './SampleNames.tsx'

/** The kinds of question, as the sentence begins. */
const kindWords: Readonly<Record<AskKind, string>> = {
  rank: 'which slips more easily',
  limit: 'whether friction keeps a limit',
  regimes: 'where the surfaces part',
  feel: 'whether the difference is felt',
  last: 'how far it lasts',
}

const kinds = Object.entries(kindWords).map(([value, words]) => ({ value: value as AskKind, words })) // keys of the table above

const sides = [
  { value: 'at most', words: 'at most' },
  { value: 'at least', words: 'at least' },
] as const

/** The question as a sentence; its kind decides the sentence. */
export function AskSentence({ hold }: { readonly hold: QuestionHold }): ReactNode {
  const kind = hold.question.ask.kind ?? 'rank'
  return (
    <>
      <p className="say">
        We want to know{' '}
        <Choice
          name="kind of question"
          value={kind}
          options={kinds}
          assumed={hold.assumed('ask.kind')}
          change={(next) => hold.setText('ask.kind', next)}
        />
        .
      </p>
      <p className="say">{sentenceOf(kind, hold)}</p>
    </>
  )
}

function sentenceOf(kind: AskKind, hold: QuestionHold): ReactNode {
  const { slowest, fastest } = hold.question.ask
  const names = (tail = ''): ReactNode => <SampleNames hold={hold} tail={tail} />
  const difference = <QuestionQuantity hold={hold} path="deciding.difference" />
  const between = (
    <>
      between <QuestionQuantity hold={hold} path="ask.slowest" most={fastest} /> and{' '}
      <QuestionQuantity hold={hold} path="ask.fastest" least={slowest} />
    </>
  )
  switch (kind) {
    case 'rank':
      return (
        <>
          Which slips more easily {between}: {names('?')} A difference under {difference} does not matter.
        </>
      )
    case 'limit':
      return (
        <>
          Does the friction of {names()} stay{' '}
          <Choice
            name="side of the limit"
            value={hold.text('ask.limitSide') === 'at least' ? 'at least' : 'at most'}
            options={sides}
            assumed={hold.assumed('ask.limitSide')}
            change={(side) => hold.setText('ask.limitSide', side)}
          />{' '}
          <QuestionQuantity hold={hold} path="ask.frictionLimit" filled={0.25} /> {between}? We expect it {difference}{' '}
          inside the limit.
        </>
      )
    case 'regimes':
      return (
        <>
          Where {between} do the surfaces of {names()} touch, where do they begin to part, and where does a full film
          carry them?
        </>
      )
    case 'feel':
      return (
        <>
          Does a hand or a mouth notice {between} that {names()} slip differently? A difference under {difference} is
          not felt.
        </>
      )
    case 'last':
      return (
        <>
          Does {names()} slide <QuestionQuantity hold={hold} path="ask.mostDistance" /> at speeds {between} before the
          contact is worn?
        </>
      )
  }
}
