import { describe, expect, test } from 'vitest'
import type { NewPaper, Paper, PaperKind } from '../../src/store/index.ts'
import { change, engines, freshLab, kinds, rawBytes, value } from './engines.ts'

const question = (content: unknown, after: number): NewPaper => ({
  ...{ subject: 'study', subjectId: 's', kind: 'question' },
  ...{ content, after },
})
const place = { subject: 'study', subjectId: 's', kind: 'question' } as const

async function labWithStudy(where: string) {
  const lab = await freshLab(where)
  value(await lab.studies.add({ id: 's', title: 'S' }, change(1)))
  const [{ record }] = value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(2)))
  return { lab, record: record.id }
}

describe.each(engines)('papers on $name', ({ place: newPlace }) => {
  test('keeps every version, with who, when and why', async () => {
    const { lab } = await labWithStudy(await newPlace())
    const first = value(await lab.keepPaper(question({ b: [1, null], a: 'µ' }, 0), change(3, '')))
    expect(first).toMatchObject({ end: 'kept', paper: { ...place, name: '', version: 1, supersedes: null } })
    value(await lab.keepPaper(question({ a: 'other' }, 1), change(4, 'too slow')))
    const versions = value(await lab.paperVersions(place))
    expect(versions.map(({ content }) => content)).toEqual([{ a: 'µ', b: [1, null] }, { a: 'other' }])
    expect(versions[1]).toMatchObject({ version: 2, supersedes: 1, change: { ...change(4, 'too slow'), number: 5 } })
    expect(value(await lab.paper(place))).toEqual(versions[1])
    expect(value(await lab.paper(place, 1))).toEqual(versions[0])
    expect(value(await lab.paper(place, 3))).toBeUndefined()
    expect(value(await lab.history.list({ kind: 'paper' }))).toEqual([
      ...[1, 2].map((version) => ({
        what: version === 1 ? 'created' : 'corrected',
        ...{ kind: 'paper', id: 'study/s/question', version },
        change: versions[version - 1].change,
      })),
    ])
  })

  test('takes a version only from somebody who saw the latest, and shows that one', async () => {
    const { lab } = await labWithStudy(await newPlace())
    expect(value(await lab.keepPaper(question(1, 1), change(3)))).toEqual({
      end: 'superseded',
      paper: undefined,
    })
    value(await lab.keepPaper(question(1, 0), change(3)))
    const late = value(await lab.keepPaper(question(2, 0), change(4)))
    expect(late).toMatchObject({ end: 'superseded', paper: { version: 1, content: 1 } })
    expect(value(await lab.history.list({ kind: 'paper' }))).toHaveLength(1)
  })

  test('lets one of many win who write at once', async () => {
    const { lab } = await labWithStudy(await newPlace())
    const ends = await Promise.all(
      Array.from({ length: 8 }, async (_, i) => value(await lab.keepPaper(question(i, 0), change(i)))),
    )
    expect(ends.filter(({ end }) => end === 'kept')).toHaveLength(1)
    const [kept] = value(await lab.paperVersions(place))
    for (const { paper } of ends) expect(paper).toEqual(kept)
  })

  test('lists the latest of each about one subject', async () => {
    const { lab, record } = await labWithStudy(await newPlace())
    const own = (kind: PaperKind, name: string): NewPaper => ({
      ...{ subject: 'lab', subjectId: 'lab', kind, name },
      ...{ content: { name }, after: 0 },
    })
    for (const [kind, name] of [
      ['material', 'birch'],
      ['liquid', 'oat-drink'],
      ['material', 'alder'],
    ] as const) {
      value(await lab.keepPaper(own(kind, name), change(3)))
    }
    value(await lab.keepPaper({ ...own('material', 'birch'), content: 2, after: 1 }, change(4, 'measured')))
    value(await lab.keepPaper({ ...question(0, 0), subject: 'record', subjectId: record, kind: 'runSheet' }, change(5)))
    const called = (papers: readonly Paper[]) => papers.map(({ kind, name, version }) => `${kind} ${name} ${version}`)
    const papers = value(await lab.papersOf('lab', 'lab'))
    expect(called(papers)).toEqual(['liquid oat-drink 1', 'material alder 1', 'material birch 2'])
    expect(called(value(await lab.papersOf('record', record)))).toEqual(['runSheet  1'])
    expect(value(await lab.papersOf('study', 's'))).toEqual([])
    expect(value(await lab.history.list({ kind: 'paper' })).map(({ id }) => id)).toContain('lab/material/birch')
  })

  test('refuses what it cannot keep', async () => {
    const { lab, record } = await labWithStudy(await newPlace())
    const refused = async (paper: Partial<NewPaper>) =>
      kinds(await lab.keepPaper({ ...question(1, 0), ...paper }, change(3)))
    expect(await refused({ subjectId: 'none' })).toEqual(['notThere'])
    expect(await refused({ subject: 'record', kind: 'mends', subjectId: record.slice(0, 12) })).toEqual(['notThere'])
    expect(await refused({ content: 'a\0b' })).toEqual([]) // JSON writes it as \u0000
    expect(await refused({ content: { '\ud83d': 1 }, after: 1 })).toEqual([]) // and half a pair as \ud83d
    expect(await refused({ subject: 'lab', subjectId: 'lab', kind: 'material' })).toEqual(['notUsable'])
    expect(await refused({ subject: 'lab', subjectId: 'lab', kind: 'material', name: '../x' })).toEqual(['notUsable'])
    const second = await lab.keepPaper(question(1, 2), change(3, ' '))
    expect(kinds(second)).toEqual(['notUsable']) // a correction needs a reason
    await expect(refused({ kind: 'mends' })).rejects.toThrow(RangeError)
    await expect(refused({ content: Number.NaN })).rejects.toThrow(RangeError)
    await expect(refused({ after: -1 })).rejects.toThrow(RangeError)
  })
})
