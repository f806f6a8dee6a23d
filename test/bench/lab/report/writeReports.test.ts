import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { amendRecord, type LabCall } from '../../../../src/bench/lab/index.ts'
import { type ReportArgs, writeReports } from '../../../../src/bench/lab/report/index.ts'
import { checksum } from '../../../../src/store/index.ts'
import { add, demoFolder, freshLab, kinds, look, outside, temporaryFolder, value } from '../labs.ts'

async function labWith(...names: readonly string[]): Promise<LabCall> {
  const call = await freshLab()
  value((await add(call, [demoFolder(...names)], { names: { study: 'Drawer runners' }, replicate: 1 })).done)
  return { ...call, why: 'a test' }
}

const report = (call: LabCall, args: ReportArgs) => writeReports(args, call, outside)

/** Words of a page, its tags and soft hyphens taken off. */
const wordsOf = (file: string): string =>
  readFileSync(file, 'utf8')
    .replace(/<style>.*?<\/style>|<[^>]+>/gs, ' ')
    .replaceAll('\u00ad', '')
    .replace(/\s+/g, ' ')

test('what people said, the study, and the checksums of raw bytes, setup and result stand in it', async () => {
  const call = await labWith('wax')
  const folder = temporaryFolder()
  const [html, notes] = [join(folder, 'wax.html'), join(folder, 'notes.yaml')]
  writeFileSync(notes, 'question: Which one slips?\ncleaning: Ethanol <five> minutes\n')
  expect(value(await report(call, { word: 'wax.csv', html, notes, author: 'MK' })).files).toEqual([html])
  const words = wordsOf(html)
  const { record, result } = await look(call, async (lab) => ({
    record: value(await lab.records.list())[0],
    result: value(await lab.results.list())[0],
  }))
  expect(words).toContain('Which one slips?')
  expect(words).toContain('Ethanol &lt;five&gt; minutes')
  expect(words).toContain('MK · 2026-11-25')
  expect(words).toContain('Drawer runners')
  expect(words).toContain(`kufe verify ${record.id.slice(0, 12)}`)
  for (const sum of [record.id, record.setup ?? '', result.sha256]) {
    expect(words.replaceAll('\u200b', '')).toContain(sum)
  }
})

test('the same lab and words give the same bytes, whenever', async () => {
  const call = await labWith('wax')
  const sums = []
  for (const day of [25, 26]) {
    const folder = temporaryFolder()
    const own = { ...outside, now: () => new Date(`2026-11-${day}T10:00:00Z`) }
    const files = { html: join(folder, 'a.html'), pdf: join(folder, 'a.pdf') }
    value(await writeReports({ word: 'wax.csv', ...files }, call, own))
    sums.push(Object.values(files).map((file) => checksum(readFileSync(file))))
  }
  expect(sums[1]).toEqual(sums[0])
})

test('a study: one report for each record, and who has none is told', async () => {
  const call = await labWith('lacquer-a-1', 'wax')
  const folder = temporaryFolder()
  await look(call, async (lab) => {
    const bytes = new TextEncoder().encode('Time [s],Torque [N·m]\n0,1\n1,2\n')
    const change = { at: outside.now().toISOString(), who: 'MK', why: '' }
    value(await lab.records.add([{ bytes, name: 'bare.csv', study: 'drawer-runners' }], change))
  })
  const { files, notReduced } = value(await report(call, { word: 'drawer-runners', html: folder }))
  expect(readdirSync(folder).sort()).toEqual([
    expect.stringMatching(/^lacquer-a-1-[0-9a-f]{12}\.html$/),
    expect.stringMatching(/^wax-[0-9a-f]{12}\.html$/),
  ])
  expect(files).toHaveLength(2)
  expect(notReduced).toMatchObject([{ name: 'bare.csv' }])
  expect(kinds(await report(call, { word: 'bare.csv', html: folder }))).toEqual(['notReduced'])
})

test('a correction changes the report, with the replicate that is right', async () => {
  const call = await labWith('wax')
  const html = join(temporaryFolder(), 'wax.html')
  value(await amendRecord({ word: 'wax.csv', names: {}, facts: { replicate: 7 } }, call, outside))
  value(await report(call, { word: 'wax.csv', html }))
  expect(wordsOf(html)).toContain('replicate 7')
})

test.for<[Partial<ReportArgs>, string]>([
  [{}, 'reportNowhere'],
  [{ html: 'x.html', date: '25.11.2026' }, 'notADay'],
  [{ html: 'x.html', notes: 'no-such-file.yaml' }, 'fileMissing'],
  [{ html: 'x.html', word: 'waxx' }, 'nothingNamed'],
  [{ html: '/dev/null/x.html' }, 'fileExists'],
])('%j: %s', async ([args, kind]) => {
  expect(kinds(await report(await labWith('wax'), { word: 'wax.csv', ...args }))).toEqual([kind])
})

test('a note that nobody knows is told with its line and what may have been meant', async () => {
  const call = await labWith('wax')
  const notes = join(temporaryFolder(), 'notes.yaml')
  writeFileSync(notes, 'question: x\ncleanin: y\n')
  const written = await report(call, { word: 'wax.csv', html: 'x.html', notes })
  expect(written).toMatchObject({
    ok: false,
    problems: [{ kind: 'noteUnknown', place: { file: 'notes.yaml', line: 2 }, mend: 'Did you mean cleaning?' }],
  })
})

test('notes that the study keeps stand in every report of it; what a file says now goes before them', async () => {
  const call = await labWith('wax')
  await look(call, async (lab) => {
    const [{ id }] = value(await lab.studies.list())
    const content = { cleaning: 'Kept <with> the study', alignment: 'Shimmed', strange: 'not an item', load: 7 }
    const change = { at: '2026-11-25T09:00:00Z', who: 'MK', why: 'a test' }
    const place = { subject: 'study', subjectId: id, after: 0 } as const
    value(await lab.keepPaper({ ...place, kind: 'notes', content }, change))
    value(
      await lab.keepPaper({ ...place, kind: 'question', content: { title: 'Which one slips more easily?' } }, change),
    )
  })
  const folder = temporaryFolder()
  const [html, notes] = [join(folder, 'wax.html'), join(folder, 'notes.yaml')]
  value(await report(call, { word: 'wax.csv', html }))
  expect(wordsOf(html)).toContain('Kept &lt;with&gt; the study')
  expect(wordsOf(html)).toContain('Which one slips more easily?')
  expect(wordsOf(html)).not.toContain('not an item')
  writeFileSync(notes, 'cleaning: Said anew\nquestion: Another question\n')
  value(await report(call, { word: 'wax.csv', html, notes }))
  expect(wordsOf(html)).toContain('Said anew')
  expect(wordsOf(html)).not.toContain('Kept &lt;with&gt;')
  expect(wordsOf(html)).toContain('Shimmed')
  expect(wordsOf(html)).toContain('Another question')
  expect(wordsOf(html)).not.toContain('Which one slips more easily?')
})
