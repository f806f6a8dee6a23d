import type { Replicate } from './replicate.ts'

/** Replicates of the samples that are compared, and the names of the samples that are left aside. */
export interface ChosenSamples {
  readonly replicates: readonly Replicate[]
  readonly aside: readonly string[]
}

/**
 * The samples that somebody chose. Where nobody did, those with two replicates or more, as a single one tells no scatter and may shorten
 * the range for all; all, where there are none such.
 */
export function chosenSamples(replicates: readonly Replicate[], chosen: readonly string[] | null): ChosenSamples {
  const counts = new Map<string, number>()
  for (const { sample } of replicates) counts.set(sample, (counts.get(sample) ?? 0) + 1)
  const repeated = [...counts].filter(([, count]) => count > 1).map(([sample]) => sample)
  const known = chosen?.filter((sample) => counts.has(sample)) ?? []
  const wanted = known.length > 0 ? known : repeated.length > 0 ? repeated : [...counts.keys()]
  return {
    replicates: replicates.filter(({ sample }) => wanted.includes(sample)),
    aside: [...counts.keys()].filter((sample) => !wanted.includes(sample)),
  }
}
