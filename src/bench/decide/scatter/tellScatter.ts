import { type HistoryAsk, type ScatterHistory, scatterHistory } from '../../../core/decide/index.ts'
import { done, failed, type Outcome, type Outside, schemaVersion } from '../../../core/terms/index.ts'
import { inLab } from '../../lab/inLab.ts'
import type { LabCall } from '../../lab/labCall.ts'
import { namedRecords } from '../../lab/named.ts'
import { labReplicates } from '../labReplicates.ts'
import { ReadWords } from '../readSpeed.ts'

/** What is asked of a lab's own history, as it is said on a command line. */
export interface ScatterWords {
  readonly at?: string
  readonly difference?: string
  readonly power?: string
  readonly significance?: string
}

/** Scatter of a lab's own replicates. */
export interface ToldScatter extends ScatterHistory {
  readonly ask: HistoryAsk
  readonly left: readonly { readonly name: string; readonly why: string }[]
}

/** The scatter between the replicates of what a person names, or of all of the lab. */
export const tellScatter = (
  { word, words }: { readonly word: string | undefined; readonly words: ScatterWords },
  call: LabCall,
  outside: Outside,
): Promise<Outcome<ToldScatter>> =>
  inLab(call, outside, async (lab): Promise<Outcome<ToldScatter>> => {
    const ask = scatterAsk(words)
    if (!ask.ok) return ask
    const records = await namedRecords(lab, word)
    if (!records.ok) return records
    const read = await labReplicates(lab, records.value)
    if (!read.ok) return read
    const replicates = read.value.usable.map(({ replicate }) => replicate)
    const told = scatterHistory(replicates, ask.value)
    return told.ok ? done({ ...told.value, ask: ask.value, left: read.value.left }) : told
  })

function scatterAsk(words: ScatterWords): Outcome<HistoryAsk> {
  const read = new ReadWords()
  const at = read.speed('at', words.at)
  const difference = read.number('difference', words.difference, { least: 0.001, most: 10 })
  const power = read.number('power', words.power, { least: 0.5, most: 0.9999 })
  const significance = read.number('significance', words.significance, { least: 1e-4, most: 0.4 })
  if (read.problems.length > 0) return failed(...read.problems)
  return done({ at, difference: difference ?? 0.1, power: power ?? 0.8, significance: significance ?? 0.05 })
}

/** The same for machines. */
export const scatterText = (told: ToldScatter): string => `${JSON.stringify({ schemaVersion, ...told }, null, 2)}\n`
