import { zeroCelsius } from './kelvin.ts'
import type { Liquid } from './liquid.ts'
import { oilLiquid } from './oilLiquid.ts'
import { pressureCoefficients } from './pressureCoefficients.ts'
import { viscosityGrades } from './viscosityGrades.ts'

/**
 * Grade, usual kinematic viscosity at 100 °C in mm²/s and density at 15 °C in kg/m³ of a paraffinic oil with a viscosity index
 * near 95. From memory; 32 and 100 as in worked examples of ASTM D341.
 */
const usual: readonly (readonly [grade: number, hot: number, density: number])[] = [
  [10, 2.6, 845],
  [15, 3.4, 855],
  [22, 4.3, 862],
  [32, 5.4, 868],
  [46, 6.8, 873],
  [68, 8.7, 879],
  [100, 11.1, 884],
  [150, 14.6, 888],
  [220, 18.8, 892],
  [320, 24, 897],
  [460, 30.2, 902],
  [680, 39, 908],
  [1000, 50, 915],
  [1500, 64, 920],
]

/** Grades for which a usual oil is known. */
export const mineralOilGrades: readonly number[] = usual.map(([grade]) => grade)

/**
 * A usual mineral oil of an ISO viscosity grade, 0 to 120 °C; undefined for grades without a usual second viscosity. Its
 * uncertainty holds the 10 % of the grade and 5 % of the usual viscosity at 100 °C, both as rectangles: a measured oil is far better.
 */
export function mineralOil(grade: number): Liquid | undefined {
  const middle = viscosityGrades.find((known) => known.grade === grade)?.middle
  const known = usual.find(([known]) => known === grade)
  if (middle === undefined || known === undefined) return undefined
  const [, hot, density] = known
  return oilLiquid({
    name: `ISO VG ${grade}`,
    seen: 'memory',
    source: 'ISO 3448 at 40 °C; viscosity at 100 °C and density usual for a viscosity index near 95, from memory',
    points: [
      { temperature: zeroCelsius + 40, viscosity: middle },
      { temperature: zeroCelsius + 100, viscosity: hot * 1e-6 },
    ],
    uncertainties: [0.1 / Math.sqrt(3), 0.05 / Math.sqrt(3)],
    density: { density, temperature: zeroCelsius + 15, expansion: 7e-4 },
    temperature: { low: zeroCelsius, high: zeroCelsius + 120 },
    pressureCoefficient: pressureCoefficients.paraffinicOil,
  })
}
