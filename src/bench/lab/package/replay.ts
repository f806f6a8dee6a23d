import { done, type Outcome, type Outside, type Problem } from '../../../core/terms/index.ts'
import type { Lab } from '../../../store/index.ts'
import type { ImportStep } from './importSteps.ts'

/** Things of one transaction. */
const batchThings = 64
const batchBytes = 1 << 25

/**
 * Makes happen again what happened in another lab, with who, when and why it was. Neighbours of one kind and one change
 * go into the lab together. Gives the results that the lab has already with other bytes: they stay as they are.
 */
export async function replay(lab: Lab, steps: readonly ImportStep[], outside: Outside): Promise<Outcome<Problem[]>> {
  const problems: Problem[] = []
  for (let at = 0; at < steps.length && !outside.stop.aborted; ) {
    const { deed, entry } = steps[at]
    if (deed.kind === 'other') {
      const acted = await deed.act(lab)
      if (!acted.ok) return acted
      at++
    } else {
      const alike = steps.slice(at, at + batchThings).findIndex((step) => !isAlike(step, steps[at]))
      const group = steps.slice(at, alike < 0 ? at + batchThings : at + alike)
      const kept = deed.kind === 'record' ? await keepRecords(lab, group) : await keepResults(lab, group, problems)
      if (!kept.ok) return kept
      at += kept.value
    }
    outside.progress(`${entry.kind}s`, at, steps.length)
  }
  return done(problems)
}

const isAlike = (a: ImportStep, b: ImportStep): boolean =>
  a.deed.kind === b.deed.kind &&
  (['at', 'who', 'why'] as const).every((name) => a.entry.change[name] === b.entry.change[name])

/** Keeps as many of the group as may be in memory together, and gives how many. */
async function keepRecords(lab: Lab, group: readonly ImportStep[]): Promise<Outcome<number>> {
  const records = []
  let size = 0
  for (const { deed } of group) {
    if (deed.kind !== 'record' || size >= batchBytes) break
    const record = await deed.record()
    size += record.bytes instanceof Uint8Array ? record.bytes.length : 0
    records.push(record)
  }
  const added = await lab.records.add(records, group[0].entry.change)
  return added.ok ? done(records.length) : added
}

async function keepResults(lab: Lab, group: readonly ImportStep[], problems: Problem[]): Promise<Outcome<number>> {
  const results = []
  for (const { deed } of group) if (deed.kind === 'result') results.push(await deed.result())
  const { change } = group[0].entry
  const added = await lab.results.add(results, change)
  if (added.ok) return done(group.length)
  if (added.problems[0]?.kind !== 'resultDiffers') return added
  for (const result of results) {
    const one = await lab.results.add([result], change)
    if (one.ok) continue
    if (one.problems[0]?.kind !== 'resultDiffers') return one
    problems.push(...one.problems)
  }
  return done(group.length)
}
