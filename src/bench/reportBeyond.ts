import { recordTurnDifference } from '../core/reduce/index.ts'
import { recordStickSlip, recordWear, vibrationWords } from '../core/reduce/questions/index.ts'
import type { Channels } from '../core/terms/index.ts'
import { type PaletteName, stickSlipFigure, wearFigure } from '../figure/index.ts'
import type { ReportFigure, ReportFinding } from '../report/index.ts'
import { reportQuestions } from './questions/reportQuestions.ts'
import { sentencesWith } from './questions/sentencesWith.ts'
import type { ReducedRecord } from './reducedRecord.ts'
import { stickSlipFigureData } from './stickSlip/stickSlipOfFile.ts'
import { sphereOf } from './wear/sphereOf.ts'
import { wearFigureData } from './wear/wearOfFile.ts'

/** What else a record says, for its report: vibration, wear, and what changed around the turn. */
export interface ReportBeyond {
  readonly findings: readonly ReportFinding[]
  readonly figures: readonly ReportFigure[]
}

const width = 720

type Draw = (options: { palette: PaletteName; width: number; id: string }) => string

const figure = (name: ReportFigure['name'], caption: string, draw: Draw): ReportFigure => ({
  name,
  caption,
  svg: draw({ palette: 'light', width, id: name }),
  darkSvg: draw({ palette: 'dark', width, id: `${name}-dark` }),
})

/** Only what has something to say: a step that is not quiet, something worn, a place of the track that changed. */
export function reportBeyond(reduced: ReducedRecord, channels: Channels): ReportBeyond {
  if (!channels.names.includes('time')) return { findings: [], figures: [] }
  const parts = [
    reportQuestions(reduced, channels),
    vibration(reduced, channels),
    wear(reduced, channels),
    turns(reduced, channels),
  ]
  return { findings: parts.flatMap(({ findings }) => findings), figures: parts.flatMap(({ figures }) => figures) }
}

const nothing: ReportBeyond = { findings: [], figures: [] }

function vibration(reduced: ReducedRecord, channels: Channels): ReportBeyond {
  const { setup, reduction } = reduced
  const found = recordStickSlip({ channels, setup, reduction })
  const cycles = found.steps.filter(({ verdict }) => !['quiet', 'irregular', 'cannotTell'].includes(verdict))
  if (cycles.length === 0) return nothing
  const data = stickSlipFigureData(reduced, found)
  const three = (value: number): string => String(Number(value.toPrecision(3)))
  return {
    findings: [
      {
        heading: 'Stick–slip and vibration',
        sentences: sentencesWith(found.sentences, found.remarks),
        figure: 'stickSlip',
        table: {
          caption: 'Steps with cycles: amplitude from peak to trough in units of friction, 95 % in brackets.',
          columns: ['step', 'what it is', 'frequency (Hz)', 'amplitude', 'sticks (%)'],
          rows: cycles.map(({ step, verdict, numbers }) => [
            String(step),
            vibrationWords[verdict],
            ...(['frequency', 'amplitude', 'stickShare'] as const).map((name) => {
              const seen = numbers?.[name]
              const by = name === 'stickShare' ? 100 : 1
              return seen === undefined
                ? '–'
                : `${three(by * seen.value)} (${three(by * seen.low)} to ${three(by * seen.high)})`
            }),
          ]),
        },
      },
    ],
    figures: [
      figure('stickSlip', 'Swing of friction and frequency of its cycles against sliding speed.', (options) =>
        stickSlipFigure({ ...data, title: 'Stick–slip', note: undefined }, options),
      ),
    ],
  }
}

function wear(reduced: ReducedRecord, channels: Channels): ReportBeyond {
  const { setup, reduction } = reduced
  const { sphere, taken } = sphereOf(setup)
  const found = recordWear({ channels, setup, reduction }, sphere)
  const told = found.balls !== null || found.track !== null || found.gap?.clear === true
  if (!told) return nothing
  const data = wearFigureData(reduced, found)
  const sentences = [...sentencesWith(found.sentences, found.remarks), ...taken]
  return {
    findings: [{ heading: 'Wear', sentences, figure: 'wear' }],
    figures: [
      figure('wear', 'Mean pressure over the sliding distance, and the depth that the gap tells.', (options) =>
        wearFigure({ ...data, title: 'Wear', caption: undefined, note: undefined }, options),
      ),
    ],
  }
}

function turns(reduced: ReducedRecord, channels: Channels): ReportBeyond {
  const { setup, reduction } = reduced
  if (!reduction.points.some((point) => point.turns >= 2)) return nothing
  const { difference, sentence, remarks } = recordTurnDifference({ channels, setup, reduction }, 'frictionSwing')
  if (difference?.spot == null) return nothing
  const sentences = [sentence, ...remarks.map(({ next }) => next)]
  return { findings: [{ heading: 'Change around the turn', sentences }], figures: [] }
}
