import { readFileSync } from 'node:fs'
import { parentPort } from 'node:worker_threads'
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler'
import { heldTogether } from '../words/heldTogether.ts'
import { breakable, drawable } from './drawable.ts'
import { glyphsOf } from './glyphs.ts'

// A thread of its own: typesetting is synchronous, and its caches are those of the thread's compiler.

/** Pages that can be set: a file each beside this one. */
export type PdfPage = 'report' | 'runSheet'

export interface PdfTask {
  readonly id: number
  readonly page: PdfPage
  /** What `typstData` or `runSheetData` gives. */
  readonly content: object
  readonly standard: string
}

export type PdfAnswer =
  | { readonly id: number; readonly pdf: Uint8Array }
  | { readonly id: number; readonly error: string }

const fontNames = [
  'SourceSans3-Regular',
  'SourceSans3-It',
  'SourceSans3-Semibold',
  'SourceSerif4-Regular',
  'SourceSerif4-It',
  'SourceSerif4-Semibold',
]
const beside = (name: string): Buffer => readFileSync(new URL(name, import.meta.url))
const fonts = fontNames.map((name) => beside(`../fonts/${name}.otf`))
/** The sans stands in for the serif, so what it has can be drawn everywhere. */
const sans = fonts.slice(0, 3).map(glyphsOf)
const pages: Readonly<Record<PdfPage, string>> = {
  report: beside('report.typ').toString('utf8'),
  runSheet: beside('runSheet.typ').toString('utf8'),
}

let compiler: NodeCompiler | undefined

function pdfOf({ page, content, standard }: PdfTask): Uint8Array {
  compiler ??= NodeCompiler.create({ fontArgs: [{ fontBlobs: fonts }], workspace: import.meta.dirname })
  const text = JSON.stringify(content, (key, value) => {
    if (typeof value !== 'string') return value
    const drawn = drawable(value, sans)
    return key === 'svg' ? drawn : breakable(heldTogether(drawn))
  })
  try {
    // No clock goes into the file: the date is the report's own, or the first of all days where it has none.
    return compiler.pdf(
      { mainFileContent: pages[page], inputs: { content: text } },
      { pdfStandard: standard, creationTimestamp: 0 },
    )
  } finally {
    compiler.evictCache(0)
  }
}

parentPort?.on('message', (task: PdfTask) => {
  const { id } = task
  try {
    const pdf = Uint8Array.from(pdfOf(task))
    parentPort?.postMessage({ id, pdf } satisfies PdfAnswer, [pdf.buffer])
  } catch (error) {
    parentPort?.postMessage({ id, error: error instanceof Error ? error.message : String(error) } satisfies PdfAnswer)
  }
})
