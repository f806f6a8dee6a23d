import { logAxis, type Plan, type PlanWindow, planBasis, planWindow } from '../../core/plan/index.ts'

/** Cells of a window to draw. */
export interface PictureSize {
  readonly columns: number
  readonly rows: number
}

/** Speeds and loads of a picture reach so far beyond what was asked for, so that the limits are seen. */
const margin = 2

/** The window around a plan's question, with the points per decade that were planned. */
export function planPicture({ question, suggestion }: Plan, { columns, rows }: PictureSize): PlanWindow {
  const { slowest, fastest, leastForce, mostForce } = question.ask
  const forces = [leastForce, mostForce, suggestion.axialForce]
  const asked = { ...question, ask: { ...question.ask, perDecade: suggestion.perDecade } }
  return planWindow(planBasis(asked), {
    speeds: logAxis(slowest / margin, fastest * margin, columns),
    forces: logAxis(Math.min(...forces) / margin, Math.max(...forces) * margin, rows),
  })
}
