import { type PlannedFile, planPicture } from '../../bench/plan/index.ts'
import { type Decision, type Plan, type Reckoning, spokenTime } from '../../core/plan/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import { painted, type Screen } from '../screen.ts'
import { planTable } from './planTable.ts'
import { windowPicture } from './windowPicture.ts'
import { wrap } from './wrap.ts'

const widest = 110

/** The whole plan for people: what to do, what it will show, what was traded, how many replicates, and what nobody judged. */
export function planInWords({ plan, taken }: PlannedFile, screen: Screen, why = false): string {
  const width = Math.min(screen.width, widest)
  const say = (text: string): string => wrap(text, width, { indent: '  ' })
  const all = (texts: readonly string[]): string => texts.map(say).join('\n')
  const section = (title: string, body: string): string =>
    body === '' ? '' : `${painted(screen, title, 'strong')}\n${body}`
  const { sentences, regime, contact, decision, warnings, suggestion } = plan
  const window = planPicture(plan, { columns: Math.max(30, Math.min(60, width - 12)), rows: 17 })
  const picture = windowPicture(window, { force: suggestion.axialForce, ...suggestion }, screen)
  const sections = [
    painted(screen, plan.question.title, 'accent'),
    section('Beyond the rig', all(warnings.map(({ what, mend }) => `${what} ${mend}`))),
    section('Do', all(toDo(plan))),
    section('Where friction can be measured', picture),
    suggestion.possible ? section('Steps, one way', planTable(plan)) : '',
    section('From which speed up may the curve be believed?', all([sentences.believable])),
    section('Boundary, mixed or full film, and does the answer survive?', all(regime.sentences)),
    section(
      'May Hertz be trusted?',
      all([
        contactWords(plan),
        contact.hertz,
        ...(plan.layer === null ? [] : [plan.layer.sentence]),
        ...contact.doubts.map(({ sentence }) => sentence),
        ...(plan.flash === null ? [] : [plan.flash.sentence]),
      ]),
    ),
    section('Traded', all(sentences.trades)),
    section('What whole turns cost', all(sentences.turnBudget)),
    section('What an error would do', all(sentences.errors)),
    section('How many, in which order', all([...decision.sentences, ...wearWords(plan), ...orderWords(decision)])),
    section('Taken from tables', all(taken)),
    section('Not said, and so not judged', all(sentences.notJudged)),
    why
      ? section(
          'How each number is reckoned, and what to doubt',
          plan.reckonings.map(reckonedInWords).map(all).join('\n\n'),
        )
      : '',
    painted(
      screen,
      say(
        'Predictions rest on guesses of friction and of the rig’s noise: the bands admit how rough. --json holds everything.',
      ),
      'quiet',
    ),
  ]
  return `${sections.filter((text) => text !== '').join('\n\n')}\n`
}

/** What a number rests on: its sentence, its law and source, where the law holds, and doubts. */
const reckonedInWords = ({ sentence, law, source, valid, doubts }: Reckoning): readonly string[] => [
  sentence,
  `Law: ${law}.${source === '' ? '' : ` Source: ${source}.`}`,
  `Valid: ${valid}`,
  ...doubts.map((doubt) => `Doubt: ${doubt}`),
]

const quantity = (value: number, dimension: Parameters<typeof printQuantity>[1]): string =>
  printQuantity(value, dimension, { digits: 2 })

function toDo({ suggestion, points, totals, question, noise }: Plan): readonly string[] {
  if (!suggestion.possible) return ['Nothing yet: change the question, the fixture or the rig.']
  const { axialForce, slowest, fastest, perDecade, coupling } = suggestion
  const way = { up: 'upwards', down: 'downwards', upAndDown: 'up and down' }[question.ask.direction]
  return [
    `Load ${quantity(axialForce, 'force')} with a ${coupling} coupling; sweep ${way} from ${quantity(slowest, 'velocity')} to ${quantity(fastest, 'velocity')}, ${perDecade} points per decade, ${points.length} steps.`,
    `It takes ${spokenTime(totals.time)} and slides ${quantity(totals.distance, 'length')}, conditioning over ${quantity(question.ask.conditioningDistance, 'length')} included.`,
    `Predicted with a torque noise of ${quantity(noise.torque, 'torque')}, a torque zero good to ${quantity(noise.torqueZero, 'torque')} and a force zero good to ${quantity(noise.forceZero, 'force')}.`,
  ]
}

function contactWords({ contact }: Plan): string {
  const { load, contactRadius, peakPressure, meanPressure, approach } = contact
  const parts = [
    `${quantity(load, 'force')} on one contact`,
    contactRadius === null ? '' : `contact radius ${quantity(contactRadius, 'length')}`,
    peakPressure === null ? '' : `peak pressure ${quantity(peakPressure, 'pressure')}`,
    peakPressure !== null || meanPressure === null ? '' : `mean pressure ${quantity(meanPressure, 'pressure')}`,
    approach === null ? '' : `sinks in ${quantity(approach, 'length')}`,
  ]
  return `${parts.filter((part) => part !== '').join(', ')}.`
}

function wearWords({ wear }: Plan): readonly string[] {
  if (wear.distance === null) return ['No wear rate is known: fresh balls and a fresh track for each record.']
  const far = quantity(wear.distance, 'length')
  return [
    wear.distance < wear.perRecord
      ? `After ${far} the contact is worn beyond what the question allows, within one record of ${quantity(wear.perRecord, 'length')}: shorten it.`
      : `One set of balls bears ${far}, so ${counted(wear.runsPerBallSet, 'record')}; another replicate takes fresh balls all the same.`,
  ]
}

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`

/** The order day by day; the same question and seed give the same. */
function orderWords({ order, days, ballSets }: Decision): readonly string[] {
  if (order.length === 0) return []
  const lines = Array.from({ length: days }, (_, index) => {
    const runs = order.filter(({ day }) => day === index + 1)
    return `Day ${index + 1}: ${runs.map(({ sample, kind }) => (kind === 'checkStandard' ? `(${sample})` : sample)).join(' · ')}`
  })
  return [
    `${order.length} runs on ${counted(days, 'day')} with ${counted(ballSets, 'set')} of balls, in an order drawn by lot within blocks:`,
    ...lines,
  ]
}
