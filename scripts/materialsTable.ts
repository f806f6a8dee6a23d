import { type KnownValue, materials, pressureCoefficients } from '../src/core/material/index.ts'
import { type Dimension, printQuantity } from '../src/core/quantity/index.ts'

const said = ({ low, value, high }: KnownValue, dimension: Dimension): string => {
  const [from, usual, to] = [low, value, high].map((one) => printQuantity(one, dimension, { digits: 2 }))
  return from === to ? usual : `${usual} (${from}–${to})`
}

/** The built-in bodies as a table of the page docs/materials.md, and the coefficients of liquids as another. */
export function materialsTables(): { readonly bodies: string; readonly coefficients: string } {
  const bodies = materials.map(
    ({ name, family, elasticModulus, poissonRatio, strength }) =>
      `| ${name} | ${family} | ${said(elasticModulus, 'pressure')} | ${poissonRatio.value} | ${strength === undefined ? '' : `${strength.kind} ${said(strength, 'pressure')}`} | ${elasticModulus.source} |`,
  )
  const coefficients = Object.entries(pressureCoefficients).map(([family, { low, value, high }]) => {
    const [from, usual, to] = [low, value, high].map((one) => Number((one * 1e9).toPrecision(3)))
    return `| ${family.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)} | ${usual} (${from}–${to}) |`
  })
  return {
    bodies: [
      '| body | family | modulus | Poisson | strength | source of the modulus |',
      '| --- | --- | --- | --- | --- | --- |',
      ...bodies,
    ].join('\n'),
    coefficients: ['| liquid | 1/GPa |', '| --- | --- |', ...coefficients].join('\n'),
  }
}
