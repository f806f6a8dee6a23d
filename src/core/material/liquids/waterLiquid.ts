import { checkedLiquid } from './checkedLiquid.ts'
import type { Liquid } from './liquid.ts'
import { pressureCoefficients } from './pressureCoefficients.ts'
import { waterAtAirPressureTemperature, waterDensity, waterViscosity } from './waterAtAirPressure.ts'
import { pressedWaterPressure, waterDensityUnderPressure } from './waterDensityUnderPressure.ts'
import { waterViscosityAtDensity } from './waterViscosityAtDensity.ts'

const airPressure = 1e5

/**
 * Pure water. At the pressure of the air by IAPWS SR6-08, under pressure (from 0 °C up) by R12-08 with the density of R7-97.
 * The releases state about 1 % (k = 2) for the first and up to 2 % for the second (from memory).
 */
export const waterLiquid: Liquid = checkedLiquid({
  name: 'water',
  seen: 'source',
  temperature: { low: 273.15, high: waterAtAirPressureTemperature.high },
  pressure: { low: 0, high: pressedWaterPressure.high - airPressure },
  shearRate: null,
  pressureCoefficient: pressureCoefficients.water,
  viscosityAt: ({ temperature, pressure }) => {
    const pressed = pressure > 0
    const density = pressed ? waterDensityUnderPressure(temperature, airPressure + pressure) : 0
    const viscosity = pressed ? waterViscosityAtDensity(temperature, density) : waterViscosity(temperature)
    return {
      viscosity,
      viscosityUncertainty: viscosity * (pressed ? 0.01 : 0.005),
      law: pressed ? 'IAPWS formulation 2008 at the density under pressure' : 'IAPWS correlation for 0.1 MPa',
      source: pressed ? 'IAPWS R12-08 and R7-97(2012)' : 'IAPWS SR6-08(2011), equation 7',
      valid: pressed ? 'Pure water, 0 to 110 °C, to 100 MPa.' : 'Pure liquid water at 0.1 MPa, 0 to 110 °C.',
      doubts: [],
    }
  },
  densityAt: (temperature) => ({
    density: waterDensity(temperature),
    law: 'IAPWS correlation for 0.1 MPa',
    source: 'IAPWS SR6-08(2011), equation 2',
    valid: 'Pure liquid water at 0.1 MPa, 0 to 110 °C.',
    doubts: [],
  }),
})
