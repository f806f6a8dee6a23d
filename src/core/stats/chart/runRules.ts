/** Patterns that a process in control shows seldom. */
export const runRuleNames = [
  'beyondThree',
  'twoOfThree',
  'fourOfFive',
  'eightOneSide',
  'nineOneSide',
  'sixRunning',
  'fourteenAlternating',
  'fifteenInside',
  'eightOutside',
] as const

/** Name of one pattern. */
export type RunRuleName = (typeof runRuleNames)[number]

/** The four rules of the Western Electric handbook (1956), and the eight of Nelson (1984); or the first alone. From memory. */
export const ruleSets = {
  one: ['beyondThree'],
  westernElectric: ['beyondThree', 'twoOfThree', 'fourOfFive', 'eightOneSide'],
  nelson: [
    'beyondThree',
    'nineOneSide',
    'sixRunning',
    'fourteenAlternating',
    'twoOfThree',
    'fourOfFive',
    'fifteenInside',
    'eightOutside',
  ],
} as const satisfies Readonly<Record<string, readonly RunRuleName[]>>

/** Name of one set of rules. */
export type RuleSetName = keyof typeof ruleSets

/** What a rule says, in words. */
export const runRuleWords: Readonly<Record<RunRuleName, string>> = {
  beyondThree: 'one value beyond three standard deviations',
  twoOfThree: 'two of three values beyond two standard deviations on one side',
  fourOfFive: 'four of five values beyond one standard deviation on one side',
  eightOneSide: 'eight values running on one side of the centre',
  nineOneSide: 'nine values running on one side of the centre',
  sixRunning: 'six values running up or down',
  fourteenAlternating: 'fourteen values up and down by turns',
  fifteenInside: 'fifteen values running within one standard deviation',
  eightOutside: 'eight values running outside one standard deviation on either side',
}

/** A pattern that was completed at value `at` and began at value `from`, both from 0. */
export interface RunAlarm {
  readonly rule: RunRuleName
  readonly from: number
  readonly at: number
}

/** How many values a rule looks back, itself included, and when it is met by the last of z. */
interface RunRule {
  readonly spans: number
  readonly met: (z: ArrayLike<number>, at: number) => boolean
}

/** Of the last `span` values at least `least` lie beyond `size` on one side, the last one among them. */
const beyond =
  (least: number, span: number, size: number): RunRule['met'] =>
  (z, at) => {
    const sign = Math.sign(z[at])
    if (!(sign * z[at] > size)) return false
    let found = 0
    for (let i = Math.max(0, at - span + 1); i <= at; i++) if (sign * z[i] > size) found++
    return found >= least
  }

/** All of the last `span` values satisfy a condition. */
const all =
  (span: number, holds: (z: ArrayLike<number>, i: number, at: number) => boolean): RunRule['met'] =>
  (z, at) => {
    if (at + 1 < span) return false
    for (let i = at; i > at - span; i--) if (!holds(z, i, at)) return false
    return true
  }

const oneSide: (span: number) => RunRule['met'] = (span) => all(span, (z, i, at) => z[i] * z[at] > 0)

/** All of the last `steps` steps satisfy a condition on a step and the one after it. */
const steps =
  (count: number, holds: (step: number, next: number) => boolean): RunRule['met'] =>
  (z, at) => {
    if (at < count) return false
    for (let i = at; i > at - count + 1; i--) if (!holds(z[i - 1] - z[i - 2], z[i] - z[i - 1])) return false
    return true
  }

const rules: Readonly<Record<RunRuleName, RunRule>> = {
  beyondThree: { spans: 1, met: (z, at) => Math.abs(z[at]) > 3 },
  twoOfThree: { spans: 3, met: beyond(2, 3, 2) },
  fourOfFive: { spans: 5, met: beyond(4, 5, 1) },
  eightOneSide: { spans: 8, met: oneSide(8) },
  nineOneSide: { spans: 9, met: oneSide(9) },
  sixRunning: { spans: 6, met: steps(5, (a, b) => a * b > 0) },
  fourteenAlternating: { spans: 14, met: steps(13, (a, b) => a * b < 0) },
  fifteenInside: { spans: 15, met: all(15, (z, i) => Math.abs(z[i]) < 1) },
  eightOutside: { spans: 8, met: all(8, (z, i) => Math.abs(z[i]) > 1) },
}

/** Which rules the last of the values meets. */
export const rulesMet = (z: ArrayLike<number>, at: number, wanted: readonly RunRuleName[]): readonly RunRuleName[] =>
  wanted.filter((rule) => rules[rule].met(z, at))

/** Every completed pattern in a series of standardised values, in their order. */
export function runAlarms(z: readonly number[], wanted: readonly RunRuleName[]): readonly RunAlarm[] {
  return z.flatMap((_, at) =>
    rulesMet(z, at, wanted).map((rule) => ({ rule, at, from: Math.max(0, at - rules[rule].spans + 1) })),
  )
}
