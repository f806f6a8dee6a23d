export { type CurveFigureData, type CurveFigureOptions, curveFigureDefaults } from './curveData.ts'
export { curveFigure } from './curveFigure.ts'
export { limitWords } from './limitWords.ts'
export { type PaletteName, palettes } from './palette.ts'
