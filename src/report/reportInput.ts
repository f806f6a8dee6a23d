import type {
  Curve,
  JudgedAnswer,
  Metre,
  Newton,
  OrderedSheet,
  Origin,
  Pascal,
  ReduceOptions,
  Reduction,
  Remark,
  Setup,
  Sha256,
  SharedSource,
} from '../core/terms/index.ts'
import type { ReportNotes } from './completeness/reportNotes.ts'
import type { ReportFigure, ReportFinding } from './reportContent.ts'

/** All that a report is made from. It is handed in whole: the report asks nobody and computes nothing that is not shown. */
export interface ReportInput {
  readonly setup: Setup
  /** Every option as it was used, defaults included. */
  readonly options: ReduceOptions
  readonly reduction: Reduction
  /** null where no curve was asked for. */
  readonly curve: Curve | null
  /** On the whole record: from reading, reducing and fitting. */
  readonly remarks: readonly Remark[]
  readonly budget: readonly BudgetPart[]
  readonly geometry: ReportGeometry
  /** Mean pressure over the contact; null where nobody computed it. */
  readonly pressure: ReportPressure | null
  readonly record: ReportRecord
  readonly origin: Origin
  readonly figures: readonly ReportFigure[]
  /** Vibration, wear and change around the turn; nothing where nobody looked. */
  readonly beyond?: readonly ReportFinding[]
  readonly texts: ReportTexts
}

/** Lever, load factor and contacts of the fixture: µ = M/(c·r·F), W = c·F/n. */
export interface ReportGeometry {
  readonly lever: Metre
  readonly loadFactor: number
  readonly contacts: number
}

/** Pressure between the fresh surfaces under `load`, by a named law. */
export interface ReportPressure {
  readonly mean: Pascal
  readonly peak: Pascal | null
  /** Normal load on one contact. */
  readonly load: Newton
  readonly law: string
  /** Why the number must be taken with care, as sentences. */
  readonly doubts: readonly string[]
}

/** What is known of the record as a file. */
export interface ReportRecord {
  /** Name of the file without its folder. */
  readonly file: string
  readonly rows: number
}

/** How much of the shared variance one cause makes, as the bench computes it. */
export interface BudgetPart {
  readonly source: SharedSource
  /** Standard uncertainty from this cause, relative to friction. */
  readonly relative: number
  /** Part of the shared variance, 0 to 1. */
  readonly share: number
}

/** A filled run sheet, its answers judged, with who kept it and on which day. */
export interface ReportAsFound {
  readonly sheet: OrderedSheet
  readonly answers: readonly JudgedAnswer[]
  readonly by: string
  readonly on: string
}

/** A written limit and what can be said of it. */
export interface ReportLimit {
  /** The limit and the rule, in words. */
  readonly limit: string
  readonly rule: string
  /** About the sample, and, where it has several mountings, about this one alone. */
  readonly sentences: readonly string[]
}

/** What the check standards of a lab say of the rig. */
export interface ReportRigWatch {
  /** One sentence for each that is watched. */
  readonly watched: readonly string[]
  /** Alarms that nobody has answered, one sentence each with the name under which it is answered. */
  readonly open: readonly { readonly sentence: string; readonly id: string }[]
}

/** What people say; none of it is needed. */
export interface ReportTexts {
  readonly question?: string
  /** The answer as people drew it from the data. */
  readonly answer?: string
  readonly author?: string
  /** Day of the report, 2026-11-25. */
  readonly date?: string
  /** Study, sample and replicate as the lab names them. */
  readonly study?: string
  readonly replicate?: number
  /** Day of the measurement, 2026-11-25. */
  readonly measured?: string
  readonly notes?: ReportNotes
  /** The written limit of the study, with its verdict on the sample. */
  readonly limit?: ReportLimit
  /** The check standards of the lab. */
  readonly rigWatch?: ReportRigWatch
  /** The filled run sheet that was kept with the record. */
  readonly asFound?: ReportAsFound
  /** SHA-256 of the result as it is kept. */
  readonly result?: Sha256
  /** How to recompute it; "kufe verify RECORD" where nobody says otherwise. */
  readonly recompute?: string
}
