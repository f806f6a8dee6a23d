import { done, type Outcome, type Setup } from '../../core/terms/index.ts'
import { readSetup } from '../../io/index.ts'
import type { KeptRecord } from '../../store/index.ts'
import { shelvedRecord } from './glance.ts'
import type { HeldLab } from './heldLab.ts'

/** How often something was used, and how far it slid. */
export interface Use {
  records: number
  /** m, as far as the records are reduced. */
  distance: number
  first: string | null
  last: string | null
  studies: string[]
}

export interface BodiesUsed {
  ballSets: (Use & { name: string; material: string | null })[]
  plates: {
    sample: string
    name: string
    material: string | null
    tracks: (Use & { radius: number | null })[]
  }[]
}

interface UsedRecord {
  readonly record: KeptRecord
  readonly setup: Setup | undefined
  readonly distance: number
}

/** Balls by the names of their sets, plates by their samples and tracks. */
export const bodiesUsed = (held: HeldLab): Promise<Outcome<BodiesUsed>> =>
  held.remembered.get('bodies', () => bodiesIn(held))

async function bodiesIn(held: HeldLab): Promise<Outcome<BodiesUsed>> {
  const used = await usedRecords(held)
  if (!used.ok) return used
  const samples = await held.lab.samples.list()
  if (!samples.ok) return samples
  const bySet = Map.groupBy(used.value, ({ record }) => record.ballSet ?? '')
  const bySample = Map.groupBy(used.value, ({ record }) => record.sample ?? '')
  const names = new Map(samples.value.map(({ id, title }) => [id, title]))
  return done({
    ballSets: [...bySet]
      .filter(([name]) => name !== '')
      .map(([name, of]) => ({ name, material: of[0].setup?.pair.upper.name ?? null, ...useOf(of) })),
    plates: [...bySample]
      .filter(([sample]) => sample !== '')
      .map(([sample, of]) => ({
        sample,
        name: names.get(sample) ?? sample,
        material: of[0].setup?.pair.lower.name ?? null,
        tracks: [...Map.groupBy(of, ({ setup }) => trackOf(setup))].map(([radius, on]) => ({ radius, ...useOf(on) })),
      })),
  })
}

async function usedRecords(held: HeldLab): Promise<Outcome<UsedRecord[]>> {
  const records = await held.lab.records.list()
  if (!records.ok) return records
  const setups = new Map<string, Setup | undefined>()
  const used: UsedRecord[] = []
  for (const record of records.value) {
    if (record.setup !== null && !setups.has(record.setup)) {
      const kept = await held.lab.setups.get(record.setup)
      if (!kept.ok) return kept
      const read = readSetup(kept.value.text, 'setup')
      setups.set(record.setup, read.ok ? read.value.setup : undefined)
    }
    const shelved = await shelvedRecord(held, record)
    if (!shelved.ok) return shelved
    const distance = shelved.value.shelved?.distance ?? 0
    used.push({ record, setup: record.setup === null ? undefined : setups.get(record.setup), distance })
  }
  return done(used)
}

const trackOf = (setup: Setup | undefined): number | null =>
  setup !== undefined && 'trackRadius' in setup.fixture ? setup.fixture.trackRadius : null

function useOf(used: readonly UsedRecord[]): Use {
  const days = used.map(({ record }) => record.day ?? record.added.at.slice(0, 10)).sort()
  return {
    records: used.length,
    distance: used.reduce((sum, { distance }) => sum + distance, 0),
    first: days[0] ?? null,
    last: days.at(-1) ?? null,
    studies: [...new Set(used.map(({ record }) => record.study).filter((study) => study !== null))],
  }
}
