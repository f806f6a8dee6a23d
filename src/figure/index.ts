export type { CurveFigureData } from './curveData.ts'
export { curveFigure } from './curveFigure.ts'
export { type PaletteName, palettes } from './palette.ts'
export { type Sign, signsOf } from './signs.ts'
