import type { Kelvin } from '../../terms/index.ts'

/** 0 °C. Many published formulas count from it. */
export const zeroCelsius: Kelvin = 273.15

/** "298.15 K (25 °C)": what people read when a table ends. */
export const temperatureInWords = (temperature: Kelvin): string =>
  Number.isFinite(temperature)
    ? `${Number(temperature.toPrecision(6))} K (${Number((temperature - zeroCelsius).toFixed(2))} °C)`
    : 'what is no number'
