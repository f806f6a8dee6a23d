import type { ReactNode } from 'react'
import type { PlanQuestion } from '../../../core/plan/index.ts'
import { go, useAddress } from '../../frame/address.ts'
import { QuestionQuantity } from '../../question/QuestionQuantity.tsx'
import { QuestionWording } from '../../question/QuestionWording.tsx'
import type { QuestionHold } from '../../question/useQuestion.ts'
import type { LivePlan } from './livePlan.ts'

interface MoreProps {
  readonly hold: QuestionHold
  readonly live: LivePlan | null
}

/** What the paragraph leaves out: bodies, rig, effort and expectations, each a sentence or two behind its heading. */
export function MoreSentences({ hold, live }: MoreProps): ReactNode {
  return (
    <section className="more" aria-label="More about it">
      <More name="bodies" heading="The two bodies">
        <BodySentence hold={hold} live={live} side="upper" />
        <BodySentence hold={hold} live={live} side="lower" />
        <LiquidSentence hold={hold} live={live} />
      </More>
      <More name="effort" heading="What it may cost">
        <EffortSentences hold={hold} />
      </More>
      <More name="expected" heading="What is expected">
        <ExpectedSentences hold={hold} live={live} />
      </More>
      <More name="rig" heading="The rig">
        <RigSentences hold={hold} />
      </More>
    </section>
  )
}

function More({
  name,
  heading,
  children,
}: {
  readonly name: string
  readonly heading: string
  readonly children: ReactNode
}): ReactNode {
  const { search } = useAddress()
  const open = search.more === name
  return (
    <div className="more-part">
      <h3>
        <button
          type="button"
          className="fold"
          aria-expanded={open}
          onClick={() => go({ search: { more: open ? null : name } }, 'replace')}
        >
          {heading}
        </button>
      </h3>
      {open && children}
    </div>
  )
}

type Side = 'upper' | 'lower'

function BodySentence({ hold, live, side }: MoreProps & { readonly side: Side }): ReactNode {
  const filled = live?.basis.question ?? hold.question
  const { name, elasticModulus, poissonRatio } = filled.pair[side]
  const { yieldStrength, flexuralStrength } = filled.bears[side]
  const quantity = (key: string, value?: number): ReactNode => (
    <QuestionQuantity hold={hold} path={key} filled={value} />
  )
  return (
    <p className="say">
      {name}: roughness Rq {quantity(`pair.${side}.roughness`)}, modulus{' '}
      {quantity(`pair.${side}.elasticModulus`, elasticModulus)}, Poisson ratio{' '}
      {quantity(`pair.${side}.poissonRatio`, poissonRatio)}; a coating or layer of {quantity(`pair.${side}.thickness`)}{' '}
      on it, all in all {quantity(`bears.${side}.plateThickness`)} thick. It yields at{' '}
      {quantity(`bears.${side}.yieldStrength`, yieldStrength)}, cracks in bending at{' '}
      {quantity(`bears.${side}.flexuralStrength`, flexuralStrength)}, and wears by {quantity(`bears.${side}.wearRate`)}{' '}
      mm³/(N·m).
    </p>
  )
}

function LiquidSentence({ hold, live }: MoreProps): ReactNode {
  const filled: PlanQuestion = live?.basis.question ?? hold.question
  if (hold.question.liquid === undefined) return null
  return (
    <p className="say">
      {hold.question.liquid.name}: viscosity{' '}
      <QuestionQuantity hold={hold} path="liquid.viscosity" filled={filled.liquid?.viscosity} />, known to{' '}
      <QuestionQuantity hold={hold} path="liquid.viscosityUncertainty" filled={filled.liquid?.viscosityUncertainty} />,
      and pressure thickens it by{' '}
      <QuestionQuantity hold={hold} path="expected.pressureViscosity" filled={filled.pressureViscosity} /> per GPa.{' '}
      <button type="button" onClick={() => hold.setText('liquid.name', undefined)}>
        Take the liquid out
      </button>
    </p>
  )
}

const EffortSentences = ({ hold }: { readonly hold: QuestionHold }): ReactNode => (
  <>
    <p className="say">
      A point may be unsure by <QuestionQuantity hold={hold} path="ask.uncertainty" /> of its friction. A step lasts at
      least <QuestionQuantity hold={hold} path="ask.leastDwell" /> and at most{' '}
      <QuestionQuantity hold={hold} path="ask.mostDwell" />, the whole sweep{' '}
      <QuestionQuantity hold={hold} path="ask.mostTime" />, and a record slides no further than{' '}
      <QuestionQuantity hold={hold} path="ask.mostDistance" />, running in over{' '}
      <QuestionQuantity hold={hold} path="ask.conditioningDistance" /> among it.
    </p>
    <p className="say">
      Loads from <QuestionQuantity hold={hold} path="ask.leastForce" filled={hold.question.ask.leastForce} /> to{' '}
      <QuestionQuantity hold={hold} path="ask.mostForce" filled={hold.question.ask.mostForce} /> come into question. In
      use the peak pressure stays under <QuestionQuantity hold={hold} path="ask.mostPressure" />; a contact may sink{' '}
      <QuestionQuantity hold={hold} path="ask.indentationShare" /> deep into a coating, and a scar grow to{' '}
      <QuestionQuantity hold={hold} path="ask.scarShare" /> times the width of the contact.
    </p>
  </>
)

function ExpectedSentences({ hold, live }: MoreProps): ReactNode {
  const noise = live?.basis.noise
  const quantity = (path: string, filled?: number): ReactNode => (
    <QuestionQuantity hold={hold} path={path} filled={filled} />
  )
  return (
    <>
      <p className="say">
        While the surfaces touch, friction is guessed at {quantity('expected.boundary')}, right within a factor of{' '}
        {quantity('expected.boundarySpread')}; in a full film at {quantity('expected.film')}, within{' '}
        {quantity('expected.filmSpread')}.
      </p>
      <p className="say">
        One reading of the torque scatters by {quantity('noise.torque', noise?.torque)}, one of the force by{' '}
        {quantity('noise.axialForce', noise?.axialForce)}, and readings forget each other within{' '}
        {quantity('noise.correlationTime', noise?.correlationTime)}. After the blank the torque is unsure by{' '}
        {quantity('noise.torqueZero', noise?.torqueZero)}, the force by {quantity('noise.forceZero', noise?.forceZero)},
        and the plate may lean by {quantity('noise.tilt', noise?.tilt)}.
      </p>
    </>
  )
}

function RigSentences({ hold }: { readonly hold: QuestionHold }): ReactNode {
  const quantity = (path: string): ReactNode => <QuestionQuantity hold={hold} path={path} />
  return (
    <p className="say">
      <QuestionWording hold={hold} path="rig.name" name="name of the rig" /> trusts torques from{' '}
      {quantity('rig.torque.floor')} to {quantity('rig.torque.ceiling')}, right within {quantity('rig.torque.accuracy')}
      ; axial forces from {quantity('rig.axialForce.floor')} to {quantity('rig.axialForce.ceiling')}, right within{' '}
      {quantity('rig.axialForce.accuracy')}; it turns at {quantity('rig.angularVelocity.floor')} to{' '}
      {quantity('rig.angularVelocity.ceiling')}. Its shaft bears {quantity('ask.mostTiltingMoment')} sideways.
    </p>
  )
}
