import { done, type Outcome, type Sha256 } from '../../../core/terms/index.ts'
import type { BesideRecord, PackageDocument } from '../../../io/dataPackage/index.ts'
import { reportHtml, reportOf, reportPdf } from '../../../report/index.ts'
import { type Lab, StoreTrouble } from '../../../store/index.ts'
import { reportInput } from '../../reportInput.ts'
import { currentResult } from '../currentResult.ts'
import { readKept } from '../readKept.ts'
import { reportTexts } from '../report/reportKept.ts'
import { withChannels } from '../withChannels.ts'

/** Points, pictures and, where asked for, reports of a record with the result that counts; nothing where it has none. */
export async function besideRecord(lab: Lab, id: Sha256, reports: boolean): Promise<BesideRecord> {
  const beside = await made(lab, id, reports)
  if (beside.ok) return beside.value
  throw new StoreTrouble(...beside.problems) // in the midst of writing a package; they find their way out as those of the store do
}

async function made(lab: Lab, id: Sha256, reports: boolean): Promise<Outcome<BesideRecord>> {
  const record = await lab.records.get(id)
  if (!record.ok) return record
  const result = await currentResult(lab, record.value)
  if (!result.ok) return result
  if (result.value === undefined) return done({ points: null, documents: [] })
  const wanted = { record: record.value, result: result.value }
  const kept = await readKept(lab, result.value)
  if (!kept.ok) return kept
  const texts = await reportTexts(lab, wanted, {})
  if (!texts.ok) return texts
  const { reduced, setup } = kept.value
  return withChannels(lab, { ...wanted, setup }, async (channels) => {
    const input = reportInput(reduced, channels, texts.value)
    const pictures = input.figures.map(({ name, caption, svg }) =>
      picture(
        name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`),
        caption,
        svg,
      ),
    )
    if (!reports) return done({ points: reduced.reduction.points, documents: pictures })
    const content = reportOf(input)
    const pages = [
      text('report.html', 'Report', { mediaType: 'text/html', content: reportHtml(content) }),
      { name: 'report.pdf', title: 'Report', mediaType: 'application/pdf', bytes: await reportPdf(content) },
    ]
    return done({ points: reduced.reduction.points, documents: [...pictures, ...pages] })
  })
}

const picture = (name: string, title: string, svg: string): PackageDocument =>
  text(`${name}.svg`, title, { mediaType: 'image/svg+xml', content: svg })

const text = (
  name: string,
  title: string,
  { mediaType, content }: { readonly mediaType: string; readonly content: string },
): PackageDocument => ({ name, title, mediaType, bytes: new TextEncoder().encode(content) })
