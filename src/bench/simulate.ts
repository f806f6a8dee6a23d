import { readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { fixtureGeometry } from '../core/fixture/index.ts'
import { type SpeedPlan, sheetSteps, simulateBreakaway, type VirtualRun } from '../core/rig/index.ts'
import { done, failed, type Outcome, type Outside } from '../core/terms/index.ts'
import {
  isBreakawayRun,
  readBreakawayRun,
  readVirtualRun,
  type VirtualRunFile,
  virtualRunTemplate,
} from '../io/index.ts'
import { fileProblem } from './fileProblem.ts'
import { renderRun, startFiles } from './renderRun.ts'
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
  /** Instead of those of the run, N and K: for series. What the law of the run refers to stays. */
  readonly axialForce?: number
  readonly temperature?: number
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
  const text = args.runFile === undefined ? done(virtualRunTemplate) : textOf(args.runFile)
  if (!text.ok) return text
  const fileName = args.runFile === undefined ? 'template' : basename(args.runFile)
  if (isBreakawayRun(text.value)) return simulateStarts(args, { text: text.value, fileName })
  const read = readVirtualRun(text.value, fileName)
  if (!read.ok) return read
  const told = underOther(read.value, args)
  const run = args.rows === undefined ? done(told.run) : withRows(told.run, args.rows)
  if (!run.ok) return run
  const stem = stemOf(args)
  const whole = { ...told, run: run.value, seed: args.seed ?? told.seed }
  const { truth, files } = renderRun(whole, { stem, progress: outside.progress })
  const written = writeTogether(files, args.force)
  if (!written.ok) return written
  const [truthFile, setup, record] = written.value
  return done({ record, truth: truthFile, setup, rows: truth.rows, steps: truth.steps.length, seed: whole.seed })
}

function textOf(file: string): Outcome<string> {
  try {
    return done(readFileSync(file, 'utf8'))
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
}

function stemOf({ name, runFile, folder }: SimulateArgs): string {
  const own = runFile === undefined ? 'virtual-run' : basename(runFile).replace(/(\.run)?\.ya?ml$/i, '')
  return join(folder, name ?? own)
}

/** The same run at another force or temperature; what its law refers to stays. */
function underOther(file: VirtualRunFile, { axialForce, temperature }: SimulateArgs): VirtualRunFile {
  if (axialForce === undefined && temperature === undefined) return file
  const { run, setup } = file
  const sheet = {
    ...run.sheet,
    axialForce: axialForce ?? run.sheet.axialForce,
    temperature: temperature ?? run.sheet.temperature,
  }
  const told = { ...setup.run, axialForce: sheet.axialForce, temperature: sheet.temperature }
  return { ...file, run: { ...run, sheet }, setup: { ...setup, run: told } }
}

/** Torque ramps from rest, with the same three files. */
function simulateStarts(
  args: SimulateArgs,
  { text, fileName }: { readonly text: string; readonly fileName: string },
): Outcome<SimulatedFiles> {
  const told = readBreakawayRun(text, fileName)
  if (!told.ok) return told
  const seed = args.seed ?? told.value.seed
  const { channels, truth } = simulateBreakaway(told.value.run, seed)
  const stem = stemOf(args)
  const written = writeTogether(startFiles(told.value, { channels, truth, stem }), args.force)
  if (!written.ok) return written
  const [truthFile, setup, record] = written.value
  return done({ record, truth: truthFile, setup, rows: truth.rows, steps: 2 * truth.starts.length, seed })
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
