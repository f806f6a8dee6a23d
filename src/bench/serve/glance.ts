import { done, type Outcome, type Setup } from '../../core/terms/index.ts'
import { readSetup } from '../../io/index.ts'
import type { KeptRecord, KeptResult, Paper, Titled } from '../../store/index.ts'
import { countingResult } from '../lab/currentResult.ts'
import { listedRecords } from '../lab/listLab.ts'
import type { HeldLab } from './heldLab.ts'
import type { ShelvedResult } from './resultShelf.ts'

/** A lab in a few numbers. */
export interface LabGlance {
  readonly about: Titled
  readonly where: string
  readonly engine: 'sqlite' | 'postgres'
  readonly counts: Readonly<Record<'studies' | 'samples' | 'records' | 'reduced' | 'setups', number>>
  readonly people: readonly string[]
  readonly papers: readonly Paper[]
}

/** What the lab is called and how much it holds. */
export const labGlance = (held: HeldLab): Promise<Outcome<LabGlance>> =>
  held.remembered.get('lab', () => glanceAt(held))

async function glanceAt({ lab, pulse }: HeldLab): Promise<Outcome<LabGlance>> {
  const about = await lab.about.list()
  if (!about.ok) return about
  const studies = await lab.studies.list()
  if (!studies.ok) return studies
  const samples = await lab.samples.list()
  if (!samples.ok) return samples
  const records = await lab.records.list()
  if (!records.ok) return records
  const results = await lab.results.list()
  if (!results.ok) return results
  const setups = await lab.setups.list()
  if (!setups.ok) return setups
  const papers = await lab.papersOf('lab', 'lab')
  if (!papers.ok) return papers
  const reduced = new Set(results.value.map(({ origin }) => `${origin.raw} ${origin.setup}`))
  return done({
    about: about.value[0],
    where: lab.where,
    engine: lab.engine,
    counts: {
      studies: studies.value.length,
      samples: samples.value.length,
      records: records.value.length,
      reduced: records.value.filter(({ id, setup }) => reduced.has(`${id} ${setup}`)).length,
      setups: setups.value.length,
    },
    people: pulse.people,
    papers: papers.value,
  })
}

/** A study in a list. */
export interface StudyGlance {
  readonly study: Titled
  readonly samples: number
  readonly records: number
  readonly reduced: number
  readonly papers: readonly Paper[]
}

/** All studies, each in a few numbers. */
export const studiesAtAGlance = (held: HeldLab): Promise<Outcome<readonly StudyGlance[]>> =>
  held.remembered.get('studies', () => studiesIn(held))

async function studiesIn({ lab }: HeldLab): Promise<Outcome<readonly StudyGlance[]>> {
  const studies = await lab.studies.list()
  if (!studies.ok) return studies
  const records = await listedRecords(lab, {})
  if (!records.ok) return records
  const glances: StudyGlance[] = []
  for (const study of studies.value) {
    const own = records.value.filter(({ record }) => record.study === study.id)
    const papers = await lab.papersOf('study', study.id)
    if (!papers.ok) return papers
    glances.push({
      study,
      samples: new Set(own.map(({ record }) => record.sample).filter((sample) => sample !== null)).size,
      records: own.length,
      reduced: own.filter(({ result }) => result !== undefined).length,
      papers: papers.value,
    })
  }
  return done(glances)
}

/** A record with the result that counts, as a shelf shows it. */
export interface ShelvedRecord {
  readonly record: KeptRecord
  readonly result: KeptResult | undefined
  readonly shelved: ShelvedResult | undefined
}

/** A study with its records. */
export interface StudyShelf {
  readonly study: Titled
  readonly samples: readonly Titled[]
  readonly records: readonly ShelvedRecord[]
  readonly papers: readonly Paper[]
}

/** A study with everything that a shelf shows. */
export const studyShelf = (held: HeldLab, id: string): Promise<Outcome<StudyShelf>> =>
  held.remembered.get(`study ${id}`, () => shelfOf(held, id))

async function shelfOf(held: HeldLab, id: string): Promise<Outcome<StudyShelf>> {
  const { lab } = held
  const study = await lab.studies.get(id)
  if (!study.ok) return study
  const kept = await lab.records.list({ study: id })
  if (!kept.ok) return kept
  const records: ShelvedRecord[] = []
  for (const record of kept.value) {
    const one = await shelvedRecord(held, record)
    if (!one.ok) return one
    records.push(one.value)
  }
  const used = new Set(kept.value.map(({ sample }) => sample))
  const samples = await lab.samples.list()
  if (!samples.ok) return samples
  const papers = await lab.papersOf('study', id)
  if (!papers.ok) return papers
  return done({
    study: study.value,
    samples: samples.value.filter((sample) => used.has(sample.id)),
    records,
    papers: papers.value,
  })
}

/** One record for a shelf. A result that cannot be read as it was kept makes the record one without. */
export async function shelvedRecord({ lab, shelf }: HeldLab, record: KeptRecord): Promise<Outcome<ShelvedRecord>> {
  const results = await lab.results.list({ record: record.id })
  if (!results.ok) return results
  const result = await countingResult(lab, record, results.value)
  if (!result.ok) return result
  if (result.value === undefined) return done({ record, result: undefined, shelved: undefined })
  const shelved = await shelf.get(result.value)
  return shelved.ok ? done({ record, result: result.value, shelved: shelved.value }) : shelved
}

/** A setup that the lab has, as it was written and as it is read. */
export interface SetupInLab {
  readonly id: string
  readonly text: string
  readonly setup: Setup | null
  /** Records that were measured with it, as far as is known now. */
  readonly records: number
}

/** Setups that the lab has, in the order in which they came. */
export async function setupsInLab({ lab }: HeldLab): Promise<Outcome<readonly SetupInLab[]>> {
  const ids = await lab.setups.list()
  if (!ids.ok) return ids
  const records = await lab.records.list()
  if (!records.ok) return records
  const setups: SetupInLab[] = []
  for (const id of ids.value) {
    const kept = await lab.setups.get(id)
    if (!kept.ok) return kept
    const read = readSetup(kept.value.text, 'setup')
    const used = records.value.filter(({ setup }) => setup === id).length
    setups.push({ id, text: kept.value.text, setup: read.ok ? read.value.setup : null, records: used })
  }
  return done(setups)
}
