import { readFileSync, statSync } from 'node:fs'
import { basename } from 'node:path'
import { done, failed, type Outcome, type Outside, type Problem } from '../../../core/terms/index.ts'
import {
  folderSource,
  type PackagedLab,
  type PackageSource,
  readDataPackage,
  zipSource,
} from '../../../io/dataPackage/index.ts'
import { type HistoryEntry, type Lab, newLab, openLab } from '../../../store/index.ts'
import { fileProblem } from '../../fileProblem.ts'
import { changeNow, type LabCall } from '../labCall.ts'
import { type ImportStep, importSteps } from './importSteps.ts'
import { newSteps } from './newSteps.ts'
import { replay } from './replay.ts'

export interface Imported {
  readonly where: string
  /** Whether the lab was made for it. */
  readonly isNew: boolean
  readonly records: number
  readonly results: number
  /** Records of the package that the lab had already; what is said about them there stays. */
  readonly known: number
  /** Results that the lab has already with other bytes. */
  readonly problems: readonly Problem[]
}

/**
 * Takes a data package into a lab. A lab that is not there yet, or an empty one, becomes the lab of the package, with its
 * history; one that holds other things gets what it does not have, after a line in its history that says so.
 */
export async function importPackage(path: string, call: LabCall, outside: Outside): Promise<Outcome<Imported>> {
  const source = await sourceOf(path)
  if (!source.ok) return source
  const packaged = await readDataPackage(source.value)
  if (!packaged.ok) return packaged
  const steps = importSteps(packaged.value)
  if (!steps.ok) return steps
  const opened = await openOrMake(call, packaged.value, outside)
  if (!opened.ok) return opened
  await using lab = opened.value.lab
  const wanted = await newSteps(lab, steps.value)
  if (!wanted.ok) return wanted
  const { isSame, steps: fresh } = wanted.value
  if (!isSame && fresh.length > 0) {
    const noted = await noteImport(lab, source.value.name, { call, outside })
    if (!noted.ok) return noted
  }
  const replayed = await replay(lab, fresh, outside)
  if (!replayed.ok) return replayed
  const count = (kind: HistoryEntry['kind'], among: readonly ImportStep[]): number =>
    among.filter(({ entry }) => entry.kind === kind && entry.what === 'created').length
  return done({
    where: lab.where,
    isNew: opened.value.isNew,
    records: count('record', fresh),
    results: count('result', fresh) - replayed.value.length,
    known: count('record', steps.value) - count('record', fresh),
    problems: replayed.value,
  })
}

async function sourceOf(path: string): Promise<Outcome<PackageSource>> {
  try {
    if (statSync(path).isDirectory()) return await folderSource(path)
    return zipSource(new Uint8Array(readFileSync(path)), basename(path))
  } catch (error) {
    return failed(fileProblem(error, path, 'read'))
  }
}

/** The lab that is there; else a new one, made by whoever made that of the package, and then. */
async function openOrMake(
  call: LabCall,
  { about }: PackagedLab,
  outside: Outside,
): Promise<Outcome<{ readonly lab: Lab; readonly isNew: boolean }>> {
  const change = changeNow(call, outside)
  const opened = await openLab(call.place, { change, program: outside.program })
  if (opened.ok) return done({ lab: opened.value, isNew: false })
  if (!opened.problems.every(({ kind }) => kind === 'labMissing' || kind === 'labUnfinished')) return opened
  const [first] = about
  const made = await newLab(call.place, first ?? { id: 'lab', title: 'Lab' }, {
    change: first?.change ?? change,
    program: outside.program,
  })
  return made.ok ? done({ lab: made.value, isNew: true }) : made
}

/** A line in the history of a lab that takes in what came about elsewhere. */
async function noteImport(
  lab: Lab,
  name: string,
  { call, outside }: { readonly call: LabCall; readonly outside: Outside },
): Promise<Outcome<unknown>> {
  const about = await lab.about.list()
  if (!about.ok) return about
  const [{ id, version, facts }] = about.value
  const before = Array.isArray(facts.imports) ? facts.imports : []
  const change = changeNow(call, outside)
  const imports = [...before, { package: name, at: change.at }]
  const why = call.why === '' ? `took in the package ${name}` : call.why
  return lab.about.correct(id, { facts: { ...facts, imports } }, { ...change, why, supersedes: version })
}
