// What the verbs of these questions need and nothing more: every module that is loaded takes time and memory.
export { writeWhole } from '../writeWhole.ts'
export { type BreakawayOfFile, breakawayOfFile, breakawayText, drawBreakaway } from './breakawayOfFile.ts'
export { drawHold, type HoldOfFile, type HoldsOfFiles, holdOfFiles, holdText, type Lives } from './holdOfFiles.ts'
export { drawLoop, type LoopOfFile, loopOfFile, loopText } from './loopOfFile.ts'
export { drawRunIn, type RunInOfFiles, runInOfFiles, runInText } from './runInOfFiles.ts'
export {
  drawFrictionMap,
  drawMultiples,
  drawSeries,
  type SeriesOfFiles,
  seriesOfFiles,
  seriesText,
} from './seriesOfFiles.ts'
