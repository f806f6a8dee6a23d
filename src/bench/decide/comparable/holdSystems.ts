import { existsSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import {
  type Comparability,
  type ComparedSystem,
  comparability,
  type HeldNumber,
  heldNumbers,
  type Replicate,
  scatterHistory,
} from '../../../core/decide/index.ts'
import { fixtureGeometry, normalLoad } from '../../../core/fixture/index.ts'
import {
  done,
  failed,
  type Outcome,
  type Outside,
  type Reduction,
  type Setup,
  schemaVersion,
} from '../../../core/terms/index.ts'
import { readSetup } from '../../../io/index.ts'
import type { Lab } from '../../../store/index.ts'
import { contactPressure } from '../../contactPressure.ts'
import { fileProblem } from '../../fileProblem.ts'
import { inLab } from '../../lab/inLab.ts'
import type { LabCall } from '../../lab/labCall.ts'
import { namedRecord } from '../../lab/named.ts'
import { labReplicates } from '../labReplicates.ts'
import { ReadWords } from '../readSpeed.ts'
import { type RigWatch, rigWatches } from '../watch/watchRig.ts'

/** Two things to compare, as they are named: records of the lab, or setup files. */
export interface ComparableWords {
  readonly first: string
  readonly second: string
  readonly at?: readonly string[]
  readonly repeatability?: string
  readonly betweenLaboratories?: string
}

/** Whether two numbers may be held against each other, and how they then stand. */
export interface HeldSystems extends Comparability {
  readonly first: string
  readonly second: string
  /** Empty where the comparison is refused, or where one of them has no record. */
  readonly numbers: readonly HeldNumber[]
  readonly repeatability: number | null
  readonly betweenLaboratories: number | null
  /** Alarms of the rig watch that nobody has answered: is it still the rig that it was? */
  readonly openAlarms: readonly string[]
}

/** Holds two tribosystems against each other, and their numbers where that is allowed. */
export async function holdSystems(
  words: ComparableWords,
  call: () => Promise<Outcome<LabCall>>,
  outside: Outside,
): Promise<Outcome<HeldSystems>> {
  const read = new ReadWords()
  const at = (words.at ?? []).flatMap((text) => read.speed('at', text) ?? [])
  const share = { least: 1e-6, most: 2 }
  const repeatability = read.number('repeatability', words.repeatability, share)
  const betweenLaboratories = read.number('between-labs', words.betweenLaboratories, share)
  if (read.problems.length > 0) return failed(...read.problems)
  const asked = { at, repeatability, betweenLaboratories }
  if ([words.first, words.second].every(isSetup)) {
    const files = [words.first, words.second].map(fromFile)
    return held(files, [], asked)
  }
  const lab = await call()
  if (!lab.ok) return lab
  return inLab(lab.value, outside, async (open) => {
    const sides = []
    for (const word of [words.first, words.second])
      sides.push(isSetup(word) ? fromFile(word) : await fromLab(open, word))
    const watches = await rigWatches(open)
    if (!watches.ok) return watches
    const own = repeatability ?? (await ownScatter(open, sides))
    return held(sides, watches.value, { ...asked, repeatability: own })
  })
}

interface Side {
  readonly system: ComparedSystem
  readonly replicate: Replicate | null
  /** Id of the sample in the lab. */
  readonly sample: string | null
}

interface Asked {
  readonly at: readonly number[]
  readonly repeatability: number | null
  readonly betweenLaboratories: number | null
}

function held(sides: readonly Outcome<Side>[], watches: readonly RigWatch[], asked: Asked): Outcome<HeldSystems> {
  const problems = sides.flatMap((side) => (side.ok ? [] : side.problems))
  const [first, second] = sides.flatMap((side) => (side.ok ? [side.value] : []))
  if (problems.length > 0 || second === undefined) return failed(...problems)
  const found = comparability(first.system, second.system)
  const cancels = found.sameRig && found.sameFixture
  const numbers =
    found.verdict === 'refused' || first.replicate === null || second.replicate === null
      ? []
      : heldNumbers(first.replicate, second.replicate, { ...asked, cancels })
  const openAlarms = watches.flatMap(({ title, alarms }) =>
    alarms.filter(({ answer }) => answer === null).map(({ label, words }) => `${title}, ${label}: ${words}`),
  )
  const { repeatability, betweenLaboratories } = asked
  return done({
    ...{ first: first.system.name, second: second.system.name, ...found, numbers },
    ...{ repeatability, betweenLaboratories, openAlarms },
  })
}

/** Scatter between mountings out of the lab's own replicates of the samples; null where they do not tell it. */
async function ownScatter(lab: Lab, sides: readonly Outcome<Side>[]): Promise<number | null> {
  const samples = new Set(sides.flatMap((side) => (side.ok && side.value.sample !== null ? [side.value.sample] : [])))
  const replicates: Replicate[] = []
  for (const sample of samples) {
    const records = await lab.records.list({ sample })
    const read = records.ok ? await labReplicates(lab, records.value) : undefined
    if (read?.ok) replicates.push(...read.value.usable.map(({ replicate }) => replicate))
  }
  const told = scatterHistory(replicates, { at: null, difference: 0.1, power: 0.8, significance: 0.05 })
  return told.ok ? told.value.scatter.total.deviation : null
}

const isSetup = (word: string): boolean => /\.ya?ml$/i.test(word) && existsSync(word)

function fromFile(file: string): Outcome<Side> {
  let text: string
  try {
    text = readFileSync(file, 'utf8')
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
  const read = readSetup(text, basename(file))
  return read.ok
    ? done({ system: systemOf(basename(file), read.value.setup, null), replicate: null, sample: null })
    : read
}

async function fromLab(lab: Lab, word: string): Promise<Outcome<Side>> {
  const record = await namedRecord(lab, word)
  if (!record.ok) return record
  const read = await labReplicates(lab, [record.value])
  if (!read.ok) return read
  const [one] = read.value.usable
  if (one === undefined) {
    return failed({
      kind: 'nothingToCompare',
      class: 'badInput',
      place: { name: record.value.name },
      what: `${record.value.name} cannot be compared: ${read.value.left[0]?.why ?? 'it has no result'}.`,
      mend: 'Add it again with a setup, or name another record.',
    })
  }
  const { reduced, replicate } = one
  return done({
    system: systemOf(record.value.name, reduced.setup, reduced.reduction),
    replicate,
    sample: record.value.sample,
  })
}

/** A tribosystem from its setup and, where there is one, its record. */
export function systemOf(name: string, setup: Setup, reduction: Reduction | null): ComparedSystem {
  const points = reduction?.points ?? []
  const forces = points.map(({ axialForce }) => axialForce).filter((force) => force > 0)
  const force =
    setup.run.axialForce ?? (forces.length > 0 ? forces.reduce((a, b) => a + b, 0) / forces.length : undefined)
  const temperatures = points.flatMap(({ temperature }) => temperature ?? [])
  const seen = temperatures.reduce((a, b) => a + b, 0) / temperatures.length
  return {
    ...{ name, setup },
    load: force === undefined ? null : normalLoad(fixtureGeometry(setup.fixture), force),
    pressure: force === undefined ? null : (contactPressure(setup, force)?.mean ?? null),
    temperature: temperatures.length > 0 ? seen : (setup.run.temperature ?? null),
    segmentation: reduction?.segmentation ?? null,
    directions: points.map(({ direction }) => direction),
  }
}

/** The same for machines. */
export const comparableText = (found: HeldSystems): string =>
  `${JSON.stringify({ schemaVersion, ...found }, null, 2)}\n`
