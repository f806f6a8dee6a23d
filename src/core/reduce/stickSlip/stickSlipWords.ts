import { printQuantity, printSteps } from '../../quantity/index.ts'
import type { Remark } from '../../terms/index.ts'
import { type StepVibration, smallestSwing, type VibrationVerdict } from './stepVibration.ts'
import type { RecordStickSlip } from './stickSlipAnswer.ts'

/** Each verdict in a few words. */
export const vibrationWords: Readonly<Record<VibrationVerdict, string>> = {
  quiet: 'quiet',
  irregular: 'irregular',
  stickSlip: 'stick–slip',
  turnLocked: 'fixed to the turn',
  hunting: 'hunting of the controller',
  ringing: 'ringing',
  unclear: 'even cycles',
  cannotTell: 'cannot tell',
}

type Bare = Omit<RecordStickSlip, 'sentences' | 'remarks'>

/** What was found, and how it stands to what the setup lets expect. */
export function stickSlipSentences(found: Bare): readonly string[] {
  const sticking = withVerdict(found.steps, 'stickSlip')
  return [
    sticking.length === 0 ? noneFound(found) : `Stick–slip on ${stepsOf(sticking)}.`,
    bracketInWords(found),
    lawInWords(found),
    naturalInWords(found, sticking),
    stiffnessInWords(found, sticking),
    dampingInWords(found),
    ...otherInWords(found.steps),
  ].filter((sentence) => sentence !== '')
}

const withVerdict = (steps: readonly StepVibration[], verdict: VibrationVerdict): readonly StepVibration[] =>
  steps.filter((step) => step.verdict === verdict)

const stepsOf = (steps: readonly StepVibration[]): string => printSteps(steps.map(({ step }) => step))

const hertz = (value: number): string => printQuantity(value, 'frequency', { digits: 3 })
const speed = (value: number): string => printQuantity(value, 'velocity', { digits: 3 })
const stiff = (value: number): string => printQuantity(value, 'torsionalStiffness', { digits: 3 })

const noneFound = ({ steps }: Bare): string => {
  const largest = Math.max(0, ...steps.map(({ swing }) => swing))
  const swing = largest < 1e-4 ? 'under 0.01 %' : printQuantity(largest, 'ratio', { digits: 2 })
  return `No stick–slip: the largest swing is ${swing} of friction.`
}

function bracketInWords({ criticalSpeed, steps }: Bare): string {
  if (criticalSpeed === null) return ''
  const { sticks, slides, mixed } = criticalSpeed
  const all = steps.every(({ verdict }) => verdict === 'stickSlip')
  if (slides === null)
    return all ? 'All steps stick; where it ends lies above the record.' : `It does not end up to ${speed(sticks)}.`
  const order = mixed ? ' Some slower steps slide evenly, so the change is not sharp.' : ''
  return `It ends between ${speed(sticks)} and ${speed(slides)}, as close as the steps lie.${order}`
}

function lawInWords({ frequencyExponent }: Bare): string {
  if (frequencyExponent === null) return ''
  const { value, low, high } = frequencyExponent
  const [power, least, most] = [value, low, high].map((end) => plain(end))
  const seen = `Its frequency goes as v^${power} (95 % ${least} to ${most})`
  if (low < 1 && high > 0.5) return `${seen}: the drive loads a spring, as stick–slip does.`
  return `${seen}: it follows the speed less than a spring loaded by the drive would, so something else sets the pace.`
}

/** Two decimals, never -0.00. */
const plain = (value: number): string => (Math.round(100 * value) / 100 + 0).toFixed(2)

function naturalInWords({ naturalFrequency }: Bare, sticking: readonly StepVibration[]): string {
  const seen = sticking.flatMap(({ numbers }) => (numbers === null ? [] : [numbers.frequency.value]))
  if (seen.length === 0) return ''
  const ends = [...new Set([hertz(Math.min(...seen)), hertz(Math.max(...seen))])]
  const range = ends.join(' to ')
  if (naturalFrequency === null) {
    return `Frequencies ${range}; stiffness and inertia of the rig are not given, so √(k/I)/2π is unknown and the cycles may belong to the rig.`
  }
  const most = Math.max(...seen) / naturalFrequency
  const verdict =
    most > 0.85
      ? 'that close, shape and frequency show the instrument, not the contact alone'
      : 'slower than the rig swings by itself, as stick–slip must be'
  return `Frequencies ${range} against √(k/I)/2π = ${hertz(naturalFrequency)}: ${verdict}.`
}

/** Within a factor of two, as fixtures and holders give way too. */
function stiffnessInWords({ stiffnessGiven }: Bare, sticking: readonly StepVibration[]): string {
  const seen = sticking.flatMap(({ stiffness }) => (stiffness === null ? [] : [stiffness.value]))
  if (seen.length === 0 || stiffnessGiven === null) return ''
  const low = Math.min(...seen)
  const high = Math.max(...seen)
  const range = `While friction rises the torque gains ${stiff(low)}${high > 1.05 * low ? ` to ${stiff(high)}` : ''}, the shaft has ${stiff(stiffnessGiven)}`
  if (high > 2 * stiffnessGiven) return `${range}: more than the shaft can give, so the rise is no standing contact.`
  if (low < 0.5 * stiffnessGiven)
    return `${range}: less, so contact or fixture give way as well, or the contact creeps.`
  return `${range}: the contact stands while it is loaded.`
}

function dampingInWords({ damping }: Bare): string {
  if (damping === null) return ''
  const percent = (value: number): string => printQuantity(value, 'ratio', { digits: 2 })
  return `Its end agrees with a damping of ${percent(damping.low)} to ${percent(damping.high)} of the critical.`
}

const others: readonly VibrationVerdict[] = ['turnLocked', 'hunting', 'ringing', 'unclear', 'irregular', 'cannotTell']

function otherInWords(steps: readonly StepVibration[]): readonly string[] {
  return others.flatMap((verdict) => {
    const found = withVerdict(steps, verdict)
    return found.length === 0 ? [] : [`${capital(stepsOf(found))}: ${whyOf(verdict, found)}`]
  })
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

function whyOf(verdict: VibrationVerdict, found: readonly StepVibration[]): string {
  const [{ numbers, turnOrder, speedSwing, blankSwing }] = found
  const frequency = numbers === null ? '' : hertz(numbers.frequency.value)
  switch (verdict) {
    case 'turnLocked':
      return `waves that keep to the same places of the turn (${turnOrder} per turn): the track, not stick–slip.`
    case 'hunting': {
      const shares = [
        speedSwing === null ? '' : `the speed swings with them by ${printQuantity(speedSwing, 'ratio', { digits: 2 })}`,
        blankSwing === null
          ? ''
          : `they are there without contact (${printQuantity(blankSwing, 'ratio', { digits: 2 })} as large)`,
      ].filter((text) => text !== '')
      return `even cycles at ${frequency}, and ${shares.join(' and ')}: the controller's own.`
    }
    case 'ringing':
      return `even cycles at ${frequency}, the natural frequency of shaft and inertia: the rig rings.`
    case 'unclear':
      return `even cycles at ${frequency} that neither speed, blank, turn nor natural frequency explains.`
    case 'irregular':
      return 'friction swings without a regular cycle: noise or single events, no stick–slip.'
    default:
      return 'friction swings, but there are under five cycles or under five samples in each: sample faster or longer.'
  }
}

/** Findings for the record: what is no stick–slip but would be taken for it. */
export function stickSlipRemarks(steps: readonly StepVibration[]): readonly Remark[] {
  return steps.flatMap(({ verdict, step, swing, numbers }): readonly Remark[] => {
    if (verdict !== 'hunting' && verdict !== 'ringing') return []
    const at = numbers === null ? '' : ` at ${hertz(numbers.frequency.value)}`
    const who = verdict === 'hunting' ? "the controller's own oscillation" : 'ringing of shaft and inertia'
    return [
      {
        kind: verdict,
        seen: swing,
        limit: smallestSwing,
        unit: '',
        step,
        sentence: `Friction swings${at} by ${printQuantity(swing, 'ratio', { digits: 3 })} of its mean: ${who}, not stick–slip.`,
        next:
          verdict === 'hunting'
            ? 'Lower the gain of the speed control, or add inertia or damping, and repeat the step.'
            : 'Change stiffness or inertia: what moves with √(k/I) is the rig.',
      },
    ]
  })
}
