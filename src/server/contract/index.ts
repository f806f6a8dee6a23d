export type { BeyondAnswer, TurnChangeAnswer } from './beyond.ts'
export type { ReplicatesAnswer } from './decision.ts'
export type { ChangedEvent, Job, JobDone, JobMade, JobProgress } from './job.ts'
export type { BodiesAnswer, HistoryAnswer, LabAnswer } from './lab.ts'
export type { NewPaper, Paper, PaperNote } from './paper.ts'
export { type ProblemDetails, problemDetails } from './problem.ts'
export type {
  ColumnGuess,
  MovedWindow,
  NewMends,
  RecordAnswer,
  RecordResult,
  StretchesAnswer,
} from './record.ts'
export type { Route } from './route.ts'
export { routes } from './routes.ts'
export type { SetupChecked, SetupsAnswer } from './setup.ts'
export type { StepAnswer, TurnsAnswer } from './step.ts'
export type { RecordBrief, StudiesAnswer, StudyAnswer, StudyBrief } from './study.ts'
export type { TraceAnswer } from './trace.ts'
export type { KeepUpload, ReadingAnswers, UploadLook, UploadMade } from './upload.ts'
