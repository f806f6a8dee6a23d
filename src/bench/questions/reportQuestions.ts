import { breakawayOf, holdOf, loopOf } from '../../core/reduce/questions/index.ts'
import type { Bounded, Channels } from '../../core/terms/index.ts'
import { breakawayFigure, holdFigure, loopFigure, type PaletteName } from '../../figure/index.ts'
import type { ReportFigure, ReportFinding } from '../../report/index.ts'
import type { ReducedRecord } from '../reducedRecord.ts'
import { sentencesWith } from './sentencesWith.ts'

/** What a record says of starts, holds and loops, for its report. */
export interface ReportQuestions {
  readonly findings: readonly ReportFinding[]
  readonly figures: readonly ReportFigure[]
}

const width = 720
const nothing: ReportQuestions = { findings: [], figures: [] }

/** Starts are looked for row by row; longer records are sweeps. */
const mostRows = 500_000

/** Speeds over the record within this share count as one speed held. */
const oneSpeed = 1.1

/** Only what the record holds: speeds both ways, one speed held, torque ramps from rest. */
export function reportQuestions(reduced: ReducedRecord, channels: Channels): ReportQuestions {
  const parts = [loopPart(reduced, channels), holdPart(reduced, channels), startsPart(reduced, channels)]
  return { findings: parts.flatMap(({ findings }) => findings), figures: parts.flatMap(({ figures }) => figures) }
}

const figure = (
  name: ReportFigure['name'],
  caption: string,
  draw: (options: { palette: PaletteName; width: number; id: string }) => string,
): ReportFigure => ({
  name,
  caption,
  svg: draw({ palette: 'light', width, id: name }),
  darkSvg: draw({ palette: 'dark', width, id: `${name}-dark` }),
})

function loopPart({ setup, reduction }: ReducedRecord, channels: Channels): ReportQuestions {
  const found = loopOf({ channels, setup, reduction })
  if (!found.ok) return nothing
  const { causes, sentence, remarks } = found.value
  const worth = causes.filter(({ verdict }) => verdict === 'likely' || verdict === 'possible')
  const table =
    worth.length === 0
      ? {}
      : {
          table: {
            caption: 'What may have made up and down differ, in order; the test tells, not the order.',
            columns: ['cause', 'verdict', 'for it', 'test'],
            rows: worth.map((cause) => [
              inWords(cause.cause),
              cause.verdict,
              [...cause.for, ...cause.against].join(' '),
              cause.test,
            ]),
          },
        }
  return {
    findings: [{ heading: 'Up and down', sentences: sentencesWith([sentence], remarks), figure: 'loop', ...table }],
    figures: [
      figure('loop', 'Friction at rising and falling speeds, and their difference between the margins.', (options) =>
        loopFigure({ title: 'Up and down', loop: found.value }, options),
      ),
    ],
  }
}

function holdPart({ setup, reduction }: ReducedRecord, channels: Channels): ReportQuestions {
  const speeds = reduction.points.map(({ slidingSpeed }) => slidingSpeed)
  if (speeds.length === 0 || !(Math.max(...speeds) <= oneSpeed * Math.min(...speeds))) return nothing
  const found = holdOf({ channels, setup, reduction })
  if (!found.ok) return nothing
  const { runIn, quantities, remarks } = found.value
  return {
    findings: [
      {
        heading: 'Friction over the distance slid',
        sentences: sentencesWith([runIn.sentence], remarks),
        figure: 'hold',
        table: {
          caption: 'The law over the distance slid, 95 % from the own part.',
          columns: ['quantity', 'value', 'unit'],
          rows: quantities.map((quantity) => [inWords(quantity.name), spanOf(quantity), quantity.unit]),
        },
      },
    ],
    figures: [
      figure('hold', 'Friction in blocks over the distance slid, the fitted law, and the last third.', (options) =>
        holdFigure({ title: 'Hold', hold: found.value }, options),
      ),
    ],
  }
}

function startsPart({ setup }: ReducedRecord, channels: Channels): ReportQuestions {
  if (channels.rows > mostRows || !channels.names.includes('angle') || !channels.names.includes('step')) return nothing
  const found = breakawayOf(channels, setup)
  if (!found.ok) return nothing
  // In a sweep whose torque is all noise a start or two may look like a ramp.
  const ramps = found.value.starts.filter(({ kind }) => kind === 'torqueRamp')
  if (ramps.length === 0 || 2 * ramps.length < found.value.starts.length) return nothing
  const { starts, ageing, ageingMissing, remarks } = found.value
  return {
    findings: [
      {
        heading: 'Breakaway',
        sentences: sentencesWith([ageing?.sentence ?? ageingMissing ?? ''], remarks),
        figure: 'breakaway',
        table: {
          caption: 'Starts from rest: static friction with 95 % from the own part.',
          columns: ['step', 'at rest (s)', 'ramp (mN·m/s)', 'static friction', 'what the peak is'],
          rows: starts.map(({ step, dwell, torqueRate, staticFriction, held, peak }) => [
            String(step),
            three(dwell),
            Number.isFinite(torqueRate) ? three(torqueRate * 1000) : '–',
            staticFriction === null ? `over ${three(held)}` : spanOf(staticFriction),
            inWords(peak.cause),
          ]),
        },
      },
    ],
    figures: [
      figure(
        'breakaway',
        'Torque against angle up to motion, and static friction against the time at rest.',
        (options) => breakawayFigure({ title: 'Breakaway', breakaway: found.value }, options),
      ),
    ],
  }
}

const three = (value: number): string => String(Number(value.toPrecision(3)))
const five = (value: number | null): string => (value === null ? 'open' : String(Number(value.toPrecision(5))))
const spanOf = ({ value, low, high }: Bounded): string => `${five(value)} (${five(low)} to ${five(high)})`

/** A name in camel case as words. */
const inWords = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
