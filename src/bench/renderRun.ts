import { simulateChunks, type Truth, truthOf } from '../core/rig/index.ts'
import type { Channels, Progress } from '../core/terms/index.ts'
import {
  type BreakawayRunFile,
  inventedLine,
  recordColumns,
  type VirtualRunFile,
  writeSetup,
  writeTable,
} from '../io/index.ts'
import type { PlannedFile } from './writeTogether.ts'

/** Where the three files of a simulated record go: `<folder>/<name>.csv`, `.setup.yaml`, `.truth.json`. */
export interface RenderTarget {
  /** Path without an ending. */
  readonly stem: string
  readonly progress: Progress
}

/** A simulated record with its truth and the setup that reduces it, ready to be written. The record is made as it is read. */
export function renderRun(
  file: VirtualRunFile,
  { stem, progress }: RenderTarget,
): { truth: Truth; files: PlannedFile[] } {
  const truth = truthOf(file.run, file.seed)
  const bytes = (text: string) => [new TextEncoder().encode(text)]
  const setup = writeSetup(file.setup, { heading: [inventedLine], columns: recordColumns(file) })
  return {
    truth,
    files: [
      { file: `${stem}.truth.json`, pieces: bytes(truthText(truth)) },
      { file: `${stem}.setup.yaml`, pieces: bytes(setup) },
      { file: `${stem}.csv`, pieces: writeTable(withProgress(file, truth.rows, progress), file.dialect) },
    ],
  }
}

/** The same for torque ramps from rest, whose record lies in memory. */
export function startFiles(
  file: BreakawayRunFile,
  { channels, truth, stem }: { readonly channels: Channels; readonly truth: object; readonly stem: string },
): PlannedFile[] {
  const bytes = (text: string) => [new TextEncoder().encode(text)]
  const columns = recordColumns({ run: { columns: channels.names }, dialect: file.dialect })
  return [
    { file: `${stem}.truth.json`, pieces: bytes(truthText(truth)) },
    { file: `${stem}.setup.yaml`, pieces: bytes(writeSetup(file.setup, { heading: [inventedLine], columns })) },
    { file: `${stem}.csv`, pieces: writeTable([channels], file.dialect) },
  ]
}

function* withProgress({ run, seed }: VirtualRunFile, rows: number, progress: Progress) {
  let made = 0
  for (const chunk of simulateChunks(run, seed)) {
    yield chunk
    made += chunk.rows
    progress('rows made', made, rows)
  }
}

/** Twelve digits: more than any instrument has, and the same on every machine. */
function truthText(truth: object): string {
  const rounded = (_key: string, value: unknown): unknown =>
    typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(12)) : value
  return `${JSON.stringify({ label: inventedLine, ...truth }, rounded, 1)}\n`
}
