import type { Metre, RadianPerSecond, Second } from '../terms/index.ts'
import { type SpeedSpan, speedSpans } from './speedPlan.ts'
import type { Dwell, RunSheet } from './virtualRun.ts'

/** One step of the run sheet as the rig will carry it out. Rows `from` (inclusive) to `to` (exclusive). */
export interface SheetStep {
  readonly number: number
  readonly kind: 'slide' | 'blank'
  readonly begins: RadianPerSecond
  readonly ends: RadianPerSecond
  readonly law: 'constant' | 'logarithmic' | 'linear'
  readonly duration: Second
  readonly starts: Second
  readonly from: number
  readonly to: number
}

/** All steps in order: blank before, sliding, blank after. Durations are rounded to whole samples, at least one. */
export function sheetSteps(sheet: RunSheet, lever: Metre): readonly SheetStep[] {
  if (!(sheet.samplingRate > 0)) throw new RangeError(`samplingRate must be positive, got ${sheet.samplingRate} 1/s`)
  const spans = speedSpans(sheet.speeds)
  const law = sheet.speeds.kind === 'ramp' ? sheet.speeds.law : 'constant'
  const kinds: ('slide' | 'blank')[] = ['slide']
  if (sheet.blankBefore) kinds.unshift('blank')
  if (sheet.blankAfter) kinds.push('blank')
  const steps: SheetStep[] = []
  let row = 0
  for (const kind of kinds) {
    for (const span of spans) {
      const seconds = sheet.speeds.kind === 'ramp' ? sheet.speeds.duration : dwellTime(sheet.dwell, span, lever)
      if (!(seconds > 0)) throw new RangeError(`a step must last, got ${seconds} s`)
      const samples = Math.max(1, Math.round(seconds * sheet.samplingRate))
      steps.push({
        number: steps.length + 1,
        kind,
        begins: span[0] / lever,
        ends: span[1] / lever,
        law,
        duration: samples / sheet.samplingRate,
        starts: row / sheet.samplingRate,
        from: row,
        to: row + samples,
      })
      row += samples
    }
  }
  return steps
}

function dwellTime(dwell: Dwell, span: SpeedSpan, lever: Metre): Second {
  if (dwell.kind === 'time') return dwell.seconds
  const turn = (2 * Math.PI * lever) / Math.abs(span[0])
  return Math.min(dwell.most, Math.max(dwell.least, dwell.turns * turn))
}
