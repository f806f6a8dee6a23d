import type { Plan, StudyCost } from '../../../core/plan/index.ts'
import { printQuantity } from '../../../core/quantity/index.ts'
import type { Why } from '../../sentence/why.ts'

const percent = (share: number): string => printQuantity(share, 'ratio', { digits: 3, unit: '%' })

/** Replicates that carry the answer. */
export function whyReplicates({ question }: Plan, { answer, replicates }: StudyCost): Why {
  const { difference, repeatability, power, significance } = question.deciding
  const kind = question.ask.kind ?? 'rank'
  const common = { key: 'replicates', what: 'replicates of each sample', word: 'replicate' }
  if (answer === null) {
    return {
      ...common,
      formula: 'n = 3',
      values: [{ sign: 'n', words: 'replicates', value: String(replicates) }],
      source: 'Common practice, no source: fewer tell no scatter.',
      validity: 'a first look; the scatter that they show decides whether more are needed.',
      changes: 'what has to be told apart: ask for a rank or a limit to plan for it.',
    }
  }
  return {
    ...common,
    formula: kind === 'limit' ? 'power = P(t′(n−1, Δ/s·√n) > t₁₋α)' : 'power = P(|t′(2n−2, Δ/s·√(n/2))| > t₁₋α⁄₂)',
    values: [
      {
        sign: 'Δ',
        words: kind === 'limit' ? 'distance from the limit' : 'difference that matters',
        value: percent(difference),
      },
      { sign: 's', words: 'scatter between replicates', value: percent(repeatability) },
      { sign: 'α', words: 'chance to see what is not there', value: percent(significance) },
      { sign: 'power', words: 'chance to see it, wanted', value: percent(power) },
      { sign: 'n', words: `replicates; exactly ${answer.exact.toPrecision(3)}`, value: String(answer.replicates) },
      { sign: 'then', words: 'chance that this number has', value: percent(answer.power) },
    ],
    source: 'Noncentral t distribution; Cohen 1988, Statistical Power Analysis.',
    validity: 'equal groups, normal scatter; at least three are run, as fewer tell no scatter.',
    changes: 'the scatter and the difference, each by its square.',
  }
}

/** Records of the study. */
export function whyRuns({ question, decision }: Plan, { runs, replicates }: StudyCost): Why {
  const checks = decision.order.filter(({ kind }) => kind === 'checkStandard').length
  const own = (replicates ?? 0) * question.deciding.samples.length
  return {
    key: 'runs',
    what: 'records of the study',
    formula: 'replicates × samples + check standards',
    values: [
      { sign: 'n', words: 'replicates of each', value: String(replicates ?? 0) },
      { sign: 'k', words: 'samples', value: String(question.deciding.samples.length) },
      { sign: 'c', words: 'runs of the check standard', value: String(Math.max(0, runs - own)) },
      ...(checks > 0
        ? [{ sign: 'd', words: 'runs that a day holds', value: String(question.deciding.runsPerDay) }]
        : []),
    ],
    source: 'Complete blocks in an order drawn by lot; a check standard opens and closes each day (common practice).',
    validity: 'no run is lost.',
    changes: 'replicates, samples, runs a day.',
    word: 'block',
  }
}

/** Hours at the rig. */
export function whyHours({ runs, time }: StudyCost, each: number): Why {
  return {
    key: 'hours',
    what: 'time at the rig',
    formula: 'records × time of one',
    values: [
      { sign: 'n', words: 'records', value: String(runs) },
      { sign: 't', words: 'one record with mounting, checks and cleaning', value: `${(each / 3600).toPrecision(2)} h` },
      { sign: 'T', words: 'together', value: `${(time / 3600).toPrecision(3)} h` },
    ],
    source: 'Run sheet of this plan.',
    validity: 'a practised hand; preparing the samples is not in it.',
    changes: 'the sweep (see the plan), the number of records.',
    word: 'runSheet',
  }
}
