import type { Dimension } from './dimension.ts'

/**
 * Units in which people read each dimension, smallest first; the first of `ladder` in which a value is 1 or more is
 * printed. `usual` stands in examples and for zero; `also` are further units that we name when somebody asks what is allowed. Common practice, no source.
 */
export const readableUnits: Readonly<
  Record<Dimension, { readonly usual: string; readonly ladder: readonly string[]; readonly also: readonly string[] }>
> = {
  time: { usual: 's', ladder: ['µs', 'ms', 's'], also: ['min', 'h'] },
  length: { usual: 'mm', ladder: ['nm', 'µm', 'mm', 'm'], also: ['cm', 'in'] },
  area: { usual: 'µm²', ladder: ['µm²', 'mm²'], also: ['m²'] },
  volume: { usual: 'mm³', ladder: ['mm³'], also: ['µm³', 'm³'] },
  mass: { usual: 'g', ladder: ['mg', 'g', 'kg'], also: [] },
  angle: { usual: '°', ladder: ['°'], also: ['rad', 'mrad', 'rev'] },
  angularVelocity: { usual: 'rad/s', ladder: ['rad/s'], also: ['1/min', 'rpm', 'rev/s', '°/s'] },
  frequency: { usual: 'Hz', ladder: ['mHz', 'Hz', 'kHz'], also: ['1/s', '1/min'] },
  velocity: { usual: 'mm/s', ladder: ['nm/s', 'µm/s', 'mm/s', 'm/s'], also: ['cm/s', 'm/min'] },
  force: { usual: 'N', ladder: ['µN', 'mN', 'N', 'kN'], also: ['gf', 'kgf'] },
  torque: { usual: 'mN·m', ladder: ['nN·m', 'µN·m', 'mN·m', 'N·m'], also: ['N·cm', 'kgf·cm'] },
  temperature: { usual: '°C', ladder: ['°C'], also: ['K', '°F'] },
  temperatureDifference: { usual: 'K', ladder: ['K'], also: ['°C', '°F'] },
  pressure: { usual: 'MPa', ladder: ['Pa', 'kPa', 'MPa', 'GPa'], also: ['N/mm²', 'bar'] },
  viscosity: { usual: 'mPa·s', ladder: ['mPa·s', 'Pa·s'], also: ['cP'] },
  kinematicViscosity: { usual: 'mm²/s', ladder: ['mm²/s', 'm²/s'], also: ['cSt'] },
  momentOfInertia: { usual: 'µN·m·s²', ladder: ['µN·m·s²', 'mN·m·s²', 'kg·m²'], also: ['g·cm²', 'N·m·s²'] },
  torsionalStiffness: { usual: 'N·m/rad', ladder: ['mN·m/rad', 'N·m/rad'], also: ['mN·m/mrad', 'N·m/°'] },
  wearRate: { usual: 'mm³/(N·m)', ladder: ['mm³/(N·m)'], also: ['m³/(N·m)'] },
  ratio: { usual: '%', ladder: ['%', '1'], also: ['‰', 'ppm'] },
  count: { usual: '1', ladder: ['1'], also: [] },
}

/** The units that an error names: the readable ones first. */
export const unitsFor = (dimension: Dimension): readonly string[] => [
  ...readableUnits[dimension].ladder,
  ...readableUnits[dimension].also,
]
