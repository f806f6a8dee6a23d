import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import { done, failed, type Outcome, type Outside, type Problem } from '../../core/terms/index.ts'
import { type Lab, newLab, openLab } from '../../store/index.ts'
import { type DemoRecord, demoFiles, demoRecords, examplesFolder } from '../demoRecords.ts'
import { nothingGiven } from '../given.ts'
import type { AddEvent } from '../lab/addEvents.ts'
import { keepFiles } from '../lab/keepFiles.ts'
import { changeNow, type LabCall } from '../lab/labCall.ts'
import { idsOf, makeNamed, type Names } from '../lab/namedThings.ts'
import { reduceKept } from '../lab/reduceKept.ts'
import { setupFinder } from '../lab/setupFiles.ts'

/** Studies of the demo, as people call them. */
const studies: Readonly<Record<DemoRecord['scenario'], { readonly name: string; readonly id: string }>> = {
  lacquer: { name: 'Drawer runners', id: 'drawer-runners' },
  'oat-drinks': { name: 'Oat drinks', id: 'oat-drinks' },
}

/** What the people of the demo, who are invented, say about a record. */
interface DemoFacts {
  readonly sample: string
  readonly replicate: number
  readonly day: string
  readonly mountedBy: string
  readonly ballSet: string
}

const by = (sample: string, replicate: number, rest: readonly [string, string, string]): DemoFacts => {
  const [day, mountedBy, ballSet] = rest
  return { sample, replicate, day, mountedBy, ballSet }
}

const facts: Readonly<Record<string, DemoFacts>> = {
  'lacquer-a-1': by('lacquer A', 1, ['2026-03-02', 'MK', 'steel 1']),
  'lacquer-b-1': by('lacquer B', 1, ['2026-03-02', 'MK', 'steel 2']),
  'lacquer-b-2': by('lacquer B', 2, ['2026-03-03', 'TO', 'steel 3']),
  'lacquer-a-2': by('lacquer A', 2, ['2026-03-03', 'TO', 'steel 4']),
  'lacquer-a-3': by('lacquer A', 3, ['2026-03-04', 'MK', 'steel 5']),
  'lacquer-b-3': by('lacquer B', 3, ['2026-03-04', 'MK', 'steel 6']),
  'lacquer-a-tilted': by('lacquer A, plate tilted', 1, ['2026-03-05', 'TO', 'steel 7']),
  'silicone-spray': by('silicone spray', 1, ['2026-03-05', 'TO', 'steel 8']),
  wax: by('wax', 1, ['2026-03-06', 'MK', 'steel 9']),
  'oat-drink-plain': by('oat drink, plain', 1, ['2026-03-09', 'EL', 'glass 1']),
  'oat-drink-creamy': by('oat drink, creamy', 1, ['2026-03-09', 'EL', 'glass 2']),
}

/** That a lab is the demo; nobody measured what is in it. */
const demoMark = { demo: true } as const

/** Whether a lab was made as the demo. */
export const isDemo = (about: { readonly facts: Readonly<Record<string, unknown>> }): boolean =>
  about.facts.demo === demoMark.demo

/**
 * Makes the demo lab in a new folder: invented records of two studies, reduced, each study with its question. A demo lab that
 * is there is taken as it is, with whatever somebody did in it; one whose making was broken off is completed.
 */
export async function demoLab(call: LabCall, outside: Outside): Promise<Outcome<null>> {
  const lab = await openDemo(call, outside)
  if (!lab.ok) return lab
  await using opened = lab.value
  const about = await opened.about.list()
  if (!about.ok) return about
  if (!isDemo(about.value[0])) return failed(otherLab(call.place))
  for (const [scenario, { name, id }] of Object.entries(studies)) {
    const asked = await keepQuestion(opened, { scenario, name, id }, { call, outside })
    if (!asked.ok) return asked
  }
  for (const [count, demo] of demoRecords.entries()) {
    outside.progress('demo', count, demoRecords.length)
    const added = await addDemo(opened, demo, { call, outside })
    if (!added.ok) return added
  }
  outside.progress('demo', demoRecords.length, demoRecords.length)
  return done(null)
}

interface Hand {
  readonly call: LabCall
  readonly outside: Outside
}

function openDemo(call: LabCall, outside: Outside): Promise<Outcome<Lab>> {
  const opening = { change: changeNow(call, outside), program: outside.program }
  if (existsSync(join(call.place, 'lab.json')) && !existsSync(join(call.place, 'unfinished'))) {
    return openLab(call.place, opening)
  }
  return newLab(call.place, { id: 'demo', title: 'Demo lab, invented', facts: demoMark }, opening)
}

async function keepQuestion(
  lab: Lab,
  { scenario, name, id }: { readonly scenario: string; readonly name: string; readonly id: string },
  { call, outside }: Hand,
): Promise<Outcome<null>> {
  const change = changeNow({ ...call, why: 'the demo: invented' }, outside)
  const named = await makeNamed(lab, { study: name }, change)
  if (!named.ok) return named
  const content = parse(readFileSync(join(examplesFolder, scenario, 'question.yaml'), 'utf8'))
  const kept = await lab.keepPaper({ subject: 'study', subjectId: id, kind: 'question', content, after: 0 }, change)
  return kept.ok ? done(null) : kept // one that is there already, perhaps changed since, stays
}

async function addDemo(lab: Lab, demo: DemoRecord, { call, outside }: Hand): Promise<Outcome<null>> {
  const { sample, ...said } = facts[demo.name]
  const { record } = demoFiles(demo)
  const names: Names = { study: studies[demo.scenario].name, sample }
  const problems: Problem[] = []
  const keeping = {
    ...{ lab, names, given: nothingGiven, outside },
    call: { ...call, why: 'the demo: invented' },
    onAdd: (event: AddEvent) => {
      if ('problems' in event) problems.push(...event.problems)
    },
  }
  const ids = idsOf(names)
  if (!ids.ok) return ids
  const file = { file: record, setup: setupFinder(undefined)(record), facts: { ...said, ...ids.value } }
  const kept = await keepFiles([file], keeping)
  if (!kept.ok) return kept
  const reduced = await reduceKept(kept.value, keeping, 0)
  if (!reduced.ok) return reduced
  return problems.length === 0 ? done(null) : failed(...problems)
}

const otherLab = (place: string): Problem => ({
  kind: 'folderNotEmpty',
  class: 'wrongUse',
  place: { file: place },
  what: 'A lab of somebody lies here, not the demo.',
  mend: 'Name a new folder for the demo, or open the lab with --lab.',
})
