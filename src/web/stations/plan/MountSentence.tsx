import type { ReactNode } from 'react'
import type { PlanQuestion } from '../../../core/plan/index.ts'
import { QuestionQuantity } from '../../question/QuestionQuantity.tsx'
import { QuestionWording } from '../../question/QuestionWording.tsx'
import { fixtureKinds } from '../../question/starterPaper.ts'
import type { QuestionHold } from '../../question/useQuestion.ts'
import { Choice } from '../../sentence/Choice.tsx'
import { plural, spelled } from '../../sentence/spelled.ts'

/** Names that the table of bodies knows; asked for when somebody edits one. */
const bodies = async (): Promise<readonly string[]> => (await import('../../question/knownNames.ts')).bodies

const pressures = [
  { value: 'uniform wear', words: 'faces that have run in' },
  { value: 'uniform pressure', words: 'new faces' },
] as const

/** What is mounted: the fixture, its sizes, and the body that turns. */
export function MountSentence({ hold }: { readonly hold: QuestionHold }): ReactNode {
  const { fixture } = hold.question
  const quantity = (key: string, spell?: (value: number) => string): ReactNode => (
    <QuestionQuantity hold={hold} path={`fixture.${key}`} spell={spell} />
  )
  const upper = <QuestionWording hold={hold} path="pair.upper.name" name="what turns" offers={bodies} />
  switch (fixture.kind) {
    case 'ballsOnPlate':
      return (
        <>
          Press {quantity('balls', spelled)} {plural(fixture.balls, 'ball')} of {upper}, {quantity('ballDiameter')}{' '}
          across, on a track of radius {quantity('trackRadius')},
        </>
      )
    case 'ballOnPlates':
      return (
        <>
          Press one ball of {upper}, {quantity('ballDiameter')} across, into {quantity('plates', spelled)} plates that
          lean at {quantity('inclination')},
        </>
      )
    case 'ballOnBalls':
      return (
        <>
          Press one ball of {upper}, {quantity('ballDiameter')} across, into three equal balls that touch,
        </>
      )
    case 'ringOnPlate':
      return (
        <>
          Press a ring of {upper}, {quantity('innerRadius')} to {quantity('outerRadius')} from the axis, in{' '}
          {quantity('segments', (count) => (count === 1 ? 'one piece' : `${spelled(count)} pieces`))}, with{' '}
          <FaceLaw hold={hold} />,
        </>
      )
    case 'discOnPlate':
      return (
        <>
          Press a disc of {upper}, {quantity('radius')} in radius, with <FaceLaw hold={hold} />,
        </>
      )
    case 'pinsOnDisc':
      return (
        <>
          Press {quantity('pins', spelled)} {plural(fixture.pins, 'pin')} of {upper}, {quantity('pinDiameter')} across,
          domed to {quantity('endRadius')}, on a track of radius {quantity('trackRadius')},
        </>
      )
  }
}

const FaceLaw = ({ hold }: { readonly hold: QuestionHold }): ReactNode => (
  <Choice
    name="how the pressure spreads"
    value={hold.text('fixture.pressure') ?? 'uniform wear'}
    options={pressures}
    assumed={hold.assumed('fixture.pressure')}
    change={(law) => hold.setText('fixture.pressure', law)}
  />
)

/** Which bodies slide on which, as a choice at the head of the paragraph. */
export const FixtureChoice = ({ hold }: { readonly hold: QuestionHold }): ReactNode => (
  <Choice
    name="kind of fixture"
    value={fixtureKinds.find((kind) => kind === hold.text('fixture.kind')) ?? 'balls on plate'}
    options={fixtureKinds.map((kind) => ({ value: kind, words: kind }))}
    assumed={hold.assumed('fixture.kind')}
    change={hold.setFixture}
  />
)

/** What lies below: the body, and its coating where it has one. */
export function LowerSentence({
  hold,
  question,
}: {
  readonly hold: QuestionHold
  readonly question: PlanQuestion
}): ReactNode {
  const layered = question.pair.lower.thickness !== undefined
  return (
    <>
      onto <QuestionWording hold={hold} path="pair.lower.name" name="what lies below" offers={bodies} />
      {layered && (
        <>
          {' '}
          (<QuestionQuantity hold={hold} path="pair.lower.thickness" /> thick)
        </>
      )}
    </>
  )
}
