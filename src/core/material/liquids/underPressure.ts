import { doubtAbove, doubtsFound, type Pascal } from '../../terms/index.ts'
import type { KnownValue } from '../knownValue.ts'
import type { LiquidViscosity } from './liquid.ts'
import { roelandsViscosity } from './pressureLaws.ts'

/** Pressures to which Roelands' law is let go, Pa above that of the air. */
export const roelandsPressure = { low: 0, high: 1e9 }

/**
 * A viscosity at the pressure of the air, brought under pressure by Roelands' law. The span of α enters the uncertainty of
 * ln η as a rectangle (JCGM 100, 4.3.7); where Barus' law differs by more than a tenth, a doubt says by how much.
 */
export function underPressure(plain: LiquidViscosity, coefficient: KnownValue, pressure: Pascal): LiquidViscosity {
  if (pressure === 0) return plain
  const at = (alpha: number) => roelandsViscosity({ viscosity: plain.viscosity, coefficient: alpha }, pressure)
  const viscosity = at(coefficient.value)
  const spread = Math.log(at(coefficient.high) / at(coefficient.low)) / (2 * Math.sqrt(3))
  const own = (plain.viscosityUncertainty ?? 0) / plain.viscosity
  const barus = Math.exp(coefficient.value * pressure) * plain.viscosity
  return {
    viscosity,
    viscosityUncertainty:
      plain.viscosityUncertainty === null && spread === 0 ? null : viscosity * Math.hypot(own, spread),
    law: `${plain.law}; Roelands`,
    source: `${plain.source}; Roelands 1966, thesis, Delft (from memory); α: ${coefficient.source}`,
    valid: `${plain.valid} Under pressure to about 1 GPa, isothermal.`,
    doubts: [
      ...plain.doubts,
      ...doubtsFound(
        doubtAbove({
          kind: 'lawsDiffer',
          seen: barus / viscosity,
          limit: 1.1,
          say: (seen) => `Barus' law gives ${seen} times this viscosity; at high pressure it is known to be too high.`,
        }),
      ),
    ],
  }
}
