import type { RandomCause } from '../stats/judging/index.ts'
import type { Replicate, ReplicateBlocks } from './replicate.ts'

const causeWords: Readonly<Record<keyof ReplicateBlocks, string>> = {
  day: 'day',
  operator: 'operator',
  ballSet: 'ball set',
}

/**
 * Days, operators and ball sets whose scatter these replicates can tell from that of the samples and of the replicates: known for
 * all, some level met by two replicates, and some sample at two levels. Two that always change together are one.
 */
export function usableCauses(replicates: readonly Replicate[]): RandomCause[] {
  const causes: { readonly key: string; readonly cause: RandomCause }[] = []
  for (const [name, words] of Object.entries(causeWords) as [keyof ReplicateBlocks, string][]) {
    const values = replicates.map(({ blocks }) => blocks[name])
    if (values.some((value) => value === null)) continue
    const known = [...new Set(values)]
    const levels = values.map((value) => known.indexOf(value))
    if (known.length < 2 || known.length === values.length || isOfSamples(levels, replicates)) continue
    const key = levels.join(' ')
    const twin = causes.findIndex((other) => other.key === key)
    if (twin < 0) causes.push({ key, cause: { name: words, levels } })
    else causes[twin] = { key, cause: { name: `${causes[twin].cause.name} and ${words} together`, levels } }
  }
  return causes.map(({ cause }) => cause)
}

/** Whether each sample was met at one level alone. */
function isOfSamples(levels: readonly number[], replicates: readonly Replicate[]): boolean {
  const pairs = new Set(replicates.map(({ sample }, i) => `${sample}\n${levels[i]}`))
  return pairs.size === new Set(replicates.map(({ sample }) => sample)).size
}
