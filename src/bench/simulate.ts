import { readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { fixtureGeometry } from '../core/fixture/index.ts'
import { type SpeedPlan, sheetSteps, type VirtualRun } from '../core/rig/index.ts'
import { done, failed, type Outcome, type Outside } from '../core/terms/index.ts'
import { readVirtualRun, type VirtualRunFile, virtualRunTemplate } from '../io/index.ts'
import { fileProblem } from './fileProblem.ts'
import { renderRun } from './renderRun.ts'
import { writeTogether } from './writeTogether.ts'

export interface SimulateArgs {
  /** Virtual run in YAML; the run of the template when undefined. */
  readonly runFile?: string
  readonly folder: string
  /** Name of the record without ending; that of the run file when undefined. */
  readonly name?: string
  /** Instead of the seed of the run. */
  readonly seed?: number
  /** About so many rows, by longer or shorter steps. */
  readonly rows?: number
  readonly force: boolean
}

/** What was written, and how much. */
export interface SimulatedFiles {
  readonly record: string
  readonly truth: string
  readonly setup: string
  readonly rows: number
  readonly steps: number
  readonly seed: number
}

/** Makes a record with its truth and its setup; all three files or none. */
export function simulate(args: SimulateArgs, outside: Outside): Outcome<SimulatedFiles> {
  const told = toldRun(args.runFile)
  if (!told.ok) return told
  const run = args.rows === undefined ? done(told.value.run) : withRows(told.value.run, args.rows)
  if (!run.ok) return run
  const name =
    args.name ?? (args.runFile === undefined ? 'virtual-run' : basename(args.runFile).replace(/(\.run)?\.ya?ml$/i, ''))
  const stem = join(args.folder, name)
  const whole = { ...told.value, run: run.value, seed: args.seed ?? told.value.seed }
  const { truth, files } = renderRun(whole, { stem, progress: outside.progress })
  const written = writeTogether(files, args.force)
  if (!written.ok) return written
  const [truthFile, setup, record] = written.value
  return done({ record, truth: truthFile, setup, rows: truth.rows, steps: truth.steps.length, seed: whole.seed })
}

function toldRun(file: string | undefined): Outcome<VirtualRunFile> {
  if (file === undefined) return readVirtualRun(virtualRunTemplate, 'template')
  let text: string
  try {
    text = readFileSync(file, 'utf8')
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
  return readVirtualRun(text, basename(file))
}

/** The same run with steps as long as `rows` needs, rounded to whole samples of a step. */
function withRows(run: VirtualRun, rows: number): Outcome<VirtualRun> {
  const steps = sheetSteps(run.sheet, fixtureGeometry(run.fixture).lever).length
  if (!(Number.isInteger(rows) && rows >= steps && rows <= 1e9)) {
    return failed({
      kind: 'rowsImpossible',
      class: 'wrongUse',
      place: {},
      what: `${rows} rows cannot hold ${steps} steps.`,
      mend: `Ask for a whole number from ${steps} to 1000000000.`,
    })
  }
  const seconds = rows / steps / run.sheet.samplingRate
  const { speeds } = run.sheet
  const lasting: SpeedPlan = speeds.kind === 'ramp' ? { ...speeds, duration: seconds } : speeds
  return done({ ...run, sheet: { ...run.sheet, speeds: lasting, dwell: { kind: 'time', seconds } } })
}
