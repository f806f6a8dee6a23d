import type { SurfaceSpec } from '../../core/terms/index.ts'
import type { Fact } from '../reportContent.ts'
import { measured, printed } from '../words/printed.ts'
import type { SectionOf } from './sectionOf.ts'

/** Sample, the two surfaces and what lies between them. */
export const pairSection: SectionOf = ({ setup: { run, pair, liquid }, texts }) => {
  const facts: Fact[] = []
  if (texts.study !== undefined) facts.push({ term: 'Study', value: texts.study })
  if (run.sample !== undefined) facts.push({ term: 'Sample', value: run.sample })
  if (texts.replicate !== undefined) facts.push({ term: 'Replicate', value: String(texts.replicate) })
  facts.push({ term: 'Upper body', value: surfaceInWords(pair.upper) })
  facts.push({ term: 'Lower body', value: surfaceInWords(pair.lower) })
  facts.push({ term: 'Between them', value: liquid === undefined ? 'nothing stated, dry' : liquidInWords(liquid) })
  if (run.note !== undefined) facts.push({ term: 'Note', value: run.note })
  return { heading: 'Sample and pair', blocks: [{ kind: 'facts', facts }] }
}

function surfaceInWords(surface: SurfaceSpec): string {
  const { name, roughness, roughnessUncertainty, elasticModulus, poissonRatio, thickness } = surface
  const parts = [name]
  if (roughness !== undefined) parts.push(`roughness Rq ${measured(roughness, roughnessUncertainty ?? 0, 'length')}`)
  if (elasticModulus !== undefined) parts.push(`Young’s modulus ${printed(elasticModulus, 'pressure')}`)
  if (poissonRatio !== undefined) parts.push(`Poisson’s ratio ${Number(poissonRatio.toPrecision(3))}`)
  if (thickness !== undefined) parts.push(`thickness ${printed(thickness, 'length')}`)
  return parts.join('; ')
}

function liquidInWords({
  name,
  viscosity,
  viscosityUncertainty,
}: {
  readonly name: string
  readonly viscosity?: number
  readonly viscosityUncertainty?: number
}): string {
  if (viscosity === undefined) return `${name}; viscosity not stated`
  return `${name}; viscosity ${measured(viscosity, viscosityUncertainty ?? 0, 'viscosity')}`
}
