import { done, type Outcome } from '../../../core/terms/index.ts'
import type { ReportFigure, ReportFinding } from '../../../report/index.ts'
import { reportBeyond } from '../../reportBeyond.ts'
import type { HeldColumns } from '../trace/heldColumns.ts'
import { type DetailDesk, withReduced } from './recordDetail.ts'

/** What a record says beyond its friction curve, and what it cannot say. */
export interface RecordBeyond {
  readonly parts: readonly {
    readonly finding: ReportFinding
    readonly figure: ReportFigure | null
  }[]
  readonly missing: readonly MissingPart[]
}

interface MissingPart {
  readonly heading: string
  /** What record, or what beside it, would say it. */
  readonly takes: string
}

/** Headings are those of the findings. */
const wanted: readonly MissingPart[] = [
  {
    heading: 'Breakaway',
    takes: 'It takes torque ramped up from rest, with step and angle recorded, after rests of known length.',
  },
  { heading: 'Friction over the distance slid', takes: 'It takes one speed and load, held over a distance.' },
  { heading: 'Up and down', takes: 'It takes the same speeds rising and falling in one record.' },
  {
    heading: 'Stick–slip and vibration',
    takes: 'No step shows cycles that can be told from noise; quick ones take many rows a cycle.',
  },
  {
    heading: 'Wear',
    takes: 'It takes scar diameters or profiles in the setup, or a gap whose fall stands clear of thermal drift.',
  },
  {
    heading: 'Change around the turn',
    takes: 'No place of the track stands out; comparing takes at least nine turns at one speed.',
  },
]

/** Starts, holds, loops, vibration, wear and the turn, as far as the record tells them. */
export const beyondOf = (held: HeldColumns, desk: DetailDesk): Promise<Outcome<RecordBeyond>> =>
  withReduced(held, desk, ({ channels }, reduced) => {
    const { findings, figures } = reportBeyond(reduced, channels)
    const found = new Set(findings.map(({ heading }) => heading))
    return done({
      parts: findings.map((finding) => ({
        finding,
        figure: figures.find(({ name }) => name === finding.figure) ?? null,
      })),
      missing: wanted.filter(({ heading }) => !found.has(heading)),
    })
  })
