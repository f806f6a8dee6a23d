import type { SurfaceSpec } from '../../core/terms/index.ts'
import type { ReportInput } from '../reportInput.ts'
import { fixtureInWords } from '../words/fixtureInWords.ts'
import { capital, counted, listed, printed } from '../words/printed.ts'
import { type Found, lacking, partly, present, sayInNote, writeInSetup } from './found.ts'

/** Bodies, surfaces and what lies between them. */
export const findTribosystem = {
  method: ({ setup }: ReportInput): Found =>
    present(`${setup.rig.name}, ${fixtureInWords(setup.fixture)}; sliding by continuous rotation.`),

  materials: ({ setup: { pair } }: ReportInput): Found =>
    partly(
      `${pair.upper.name} on ${pair.lower.name}.`,
      sayInNote('how both were treated and how hard they are', 'materials'),
    ),

  specimens: ({ setup }: ReportInput): Found =>
    partly(
      `${capital(fixtureInWords(setup.fixture))}.`,
      sayInNote('how large and how thick the lower body is', 'specimens'),
    ),

  surfaces: ({ setup: { pair } }: ReportInput): Found => {
    const sides = [
      { side: 'upper', surface: pair.upper },
      { side: 'lower', surface: pair.lower },
    ]
    const known = sides.filter(({ surface }) => surface.roughness !== undefined)
    const missing = sides.filter(({ surface }) => surface.roughness === undefined)
    const keys = missing.map(({ side }) => `pair.${side}.roughness`)
    const made = sayInNote('how they were made', 'surfaces')
    if (known.length === 0) return lacking(`${writeInSetup(...keys)} ${made}`)
    const has = `${listed(known.map(({ side, surface }) => `Rq of the ${side} surface ${roughnessOf(surface)}`))}.`
    return partly(has, keys.length === 0 ? made : `${writeInSetup(...keys)} ${made}`)
  },

  cleaning: (): Found => lacking(sayInNote('how both bodies were cleaned, dried and kept', 'cleaning')),

  lubricant: ({ setup: { liquid } }: ReportInput): Found => {
    if (liquid === undefined) return present('None: dry.')
    const supply = sayInNote('how much of it was supplied, and how', 'lubricant')
    return liquid.viscosity === undefined
      ? partly(`${liquid.name}.`, `${writeInSetup('liquid.viscosity')} ${supply}`)
      : partly(`${liquid.name}, ${printed(liquid.viscosity, 'viscosity')}.`, supply)
  },

  contact: ({ setup, pressure, geometry }: ReportInput): Found => {
    const contacts = capital(counted(geometry.contacts, 'contact'))
    if (pressure !== null) {
      return present(`${contacts}, mean pressure ${printed(pressure.mean, 'pressure')} (${pressure.law}).`)
    }
    const missing = (['upper', 'lower'] as const).flatMap((side) =>
      (['elasticModulus', 'poissonRatio'] as const)
        .filter((key) => setup.pair[side][key] === undefined)
        .map((key) => `pair.${side}.${key}`),
    )
    return partly(
      `${contacts}.`,
      missing.length === 0
        ? sayInNote('the nominal pressure', 'contact')
        : `${writeInSetup(...missing)} The pressure follows from them.`,
    )
  },
}

const roughnessOf = ({ roughness = 0, roughnessUncertainty }: SurfaceSpec): string =>
  `${printed(roughness, 'length')}${roughnessUncertainty === undefined ? '' : ` ± ${printed(roughnessUncertainty, 'length', 2)}`}`
