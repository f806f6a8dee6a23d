import { done, type Outcome, type Outside } from '../../core/terms/index.ts'
import type { Change, KeptRecord, Lab } from '../../store/index.ts'
import { givenFromOrigin, nothingGiven } from '../given.ts'
import { type ComputedResult, computeResult } from './computeResult.ts'
import { currentResult } from './currentResult.ts'
import { firstName } from './firstName.ts'
import { rawSource } from './rawSource.ts'
import type { SetupText } from './setupFiles.ts'

/** A record reduced with a setup that the lab need not know yet. */
export interface ReducedAnew {
  readonly setup: SetupText
  readonly result: ComputedResult
}

/** Reduces and fits a record with another setup; what was said beside the old one is said again. Keeps nothing. */
export async function reduceAnew(
  { lab, record }: { readonly lab: Lab; readonly record: KeptRecord },
  setup: SetupText,
  outside: Outside,
): Promise<Outcome<ReducedAnew>> {
  const current = await currentResult(lab, record)
  if (!current.ok) return current
  const given = current.value === undefined ? nothingGiven : givenFromOrigin(current.value.origin.options)
  const file = await firstName(lab, record)
  if (!file.ok) return file
  const raw = await rawSource(lab, record)
  if (!raw.ok) return raw
  try {
    const { program } = outside
    const task = {
      source: raw.value.source,
      file: file.value,
      setupText: setup.text,
      given,
      kind: 'fit',
      program,
    } as const
    const result = await computeResult(task)
    return result.ok ? done({ setup, result: result.value }) : result
  } finally {
    raw.value.dispose()
  }
}

/** Keeps the setup and the result. */
export async function keepReduced(lab: Lab, { setup, result }: ReducedAnew, change: Change): Promise<Outcome<null>> {
  const added = await lab.setups.add(setup.text, change)
  if (!added.ok) return added
  const { kind, origin, text } = result
  const kept = await lab.results.add([{ kind, origin, text }], change)
  return kept.ok ? done(null) : kept
}
