import { done, type Outcome, type Outside, type Problem } from '../../../core/terms/index.ts'
import {
  dataPackageFiles,
  type PackageContent,
  type PackageFile,
  writePackageFolder,
  zipPackage,
} from '../../../io/dataPackage/index.ts'
import { type Lab, StoreTrouble } from '../../../store/index.ts'
import { writeNew } from '../../writeWhole.ts'
import { inLab } from '../inLab.ts'
import type { LabCall } from '../labCall.ts'
import { named, namedRecords } from '../named.ts'
import { besideRecord } from './besideRecord.ts'
import { gatherLab } from './gatherLab.ts'

export interface ExportArgs {
  /** A record, a study or a sample; the whole lab where undefined. */
  readonly word: string | undefined
  /** A folder that is not there yet, or a zip. */
  readonly out: string
  readonly title?: string
  /** People or bodies that answer for it. */
  readonly creators: readonly string[]
  /** Identifier of the licence under which it may be used. */
  readonly licence?: string
  /** Reports as HTML and PDF beside each record. */
  readonly reports: boolean
}

export interface Exported {
  readonly out: string
  readonly records: number
  readonly files: number
  readonly bytes: number
}

/** Writes what a person names as a data package: raw bytes, setups, results, tables, pictures, checksums, and all its history. */
export const exportLab = (args: ExportArgs, call: LabCall, outside: Outside): Promise<Outcome<Exported>> =>
  inLab(call, outside, async (lab): Promise<Outcome<Exported>> => {
    const content = await contentOf(lab, args, outside)
    if (!content.ok) return content
    const files = dataPackageFiles(content.value)
    const written = args.out.toLowerCase().endsWith('.zip')
      ? await writeZip(files, args.out)
      : await writePackageFolder(files, args.out)
    return written.ok ? done({ out: args.out, records: content.value.lab.records.length, ...written.value }) : written
  })

async function contentOf(lab: Lab, args: ExportArgs, outside: Outside): Promise<Outcome<PackageContent>> {
  const { word, creators, licence, reports } = args
  const records = word === undefined ? done(undefined) : await namedRecords(lab, word)
  if (!records.ok) return records
  const gathered = await gatherLab(lab, records.value)
  if (!gathered.ok) return gathered
  const title = args.title ?? (await titleOf(lab, word))
  const count = gathered.value.records.length
  let made = 0
  return done({
    title,
    description: `Friction measured on a rotational rheometer: ${count} ${count === 1 ? 'record' : 'records'} with setups, results and history.`,
    created: outside.now().toISOString(),
    creators,
    licence: licence === undefined ? null : { name: licence },
    program: outside.program,
    lab: gathered.value,
    beside: async (id) => {
      outside.progress('exporting', made++, count)
      return besideRecord(lab, id, reports)
    },
  })
}

async function titleOf(lab: Lab, word: string | undefined): Promise<string> {
  const found = word === undefined ? undefined : await named(lab, word)
  if (found?.ok && found.value.kind === 'record') return found.value.record.name
  if (found?.ok && found.value.kind === 'study') return found.value.study.title
  if (found?.ok && found.value.kind === 'sample') return found.value.sample.title
  const about = await lab.about.list()
  return about.ok ? (about.value[0]?.title ?? 'lab') : 'lab'
}

/** Most that a zip of ours holds, bytes. */
const largestZip = 2 ** 31

async function writeZip(
  files: AsyncIterable<PackageFile>,
  out: string,
): Promise<Outcome<Pick<Exported, 'files' | 'bytes'>>> {
  const size = { files: 0, bytes: 0 }
  const zip = await zipPackage(
    (async function* () {
      for await (const file of files) {
        size.files++
        size.bytes += file.bytes.length
        if (size.bytes > largestZip) throw new StoreTrouble(tooLong(out))
        yield file
      }
    })(),
  )
  const written = writeNew(out, zip, false)
  return written.ok ? done(size) : written
}

const tooLong = (out: string): Problem => ({
  kind: 'packageTooLong',
  class: 'wrongUse',
  place: { file: out },
  what: 'This is more than a zip of two gibibytes holds.',
  mend: 'Write it as a folder: leave out ".zip".',
})
