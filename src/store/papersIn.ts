import type { Outcome } from '../core/terms/index.ts'
import { attempt } from './attempt.ts'
import { canonicalJson } from './canonicalJson.ts'
import { type Change, checkedChange } from './change.ts'
import type { Engine } from './engine.ts'
import { note } from './history.ts'
import { checkSubject, paperPlace, paperRow, paperVersions } from './paperRows.ts'
import { type NewPaper, type PaperKept, type Papers, paperId } from './papers.ts'
import { plainText } from './plainText.ts'

/** The papers of a lab. */
export const papersIn = (engine: Engine): Papers => ({
  keepPaper: (paper, change) => attempt(engine.place, () => keepPaper(engine, paper, change)),
  papersOf: (subject, subjectId) =>
    attempt(engine.place, () => paperVersions(engine.read, { subject, subjectId, latest: true })),
  paper: (place, version): Promise<Outcome<PaperKept['paper']>> =>
    attempt(engine.place, async () => {
      const wanted = { ...paperPlace(place), version, latest: version === undefined }
      return (await paperVersions(engine.read, wanted)).at(-1)
    }),
  paperVersions: (place) => attempt(engine.place, () => paperVersions(engine.read, paperPlace(place))),
})

function keepPaper(engine: Engine, paper: NewPaper, said: Change): Promise<PaperKept> {
  const place = paperPlace(paper)
  const text = plainText(canonicalJson(paper.content), place.kind)
  const { after } = paper
  if (!Number.isInteger(after) || after < 0) throw new RangeError(`after must be a version or 0, got ${after}`)
  return engine.write(async (writing): Promise<PaperKept> => {
    await checkSubject(writing, place)
    const latest = (await paperVersions(writing, { ...place, latest: true })).at(-1)
    if ((latest?.version ?? 0) !== after) return { end: 'superseded', paper: latest }
    const version = after + 1
    const what = version === 1 ? 'created' : 'corrected'
    const subject = { what, kind: 'paper', id: paperId(place), version } as const
    const [change] = await note(writing, checkedChange(said, what), [subject])
    await writing.insertInto('paper_versions').values(paperRow(place, { version, text, change })).execute()
    const [kept] = await paperVersions(writing, { ...place, version })
    return { end: 'kept', paper: kept }
  })
}
