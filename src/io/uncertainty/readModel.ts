import { isMap, isSeq, type Node } from 'yaml'
import { anyUnit, foldName, formulaIn, parseQuantity, sameUnits, unitInWords } from '../../core/quantity/index.ts'
import { done, failed, type Outcome } from '../../core/terms/index.ts'
import { yamlSource } from '../setup/yamlSource.ts'
import { ModelReader } from './modelReader.ts'
import { readQuantity } from './readQuantity.ts'
import type { InputQuantity, NamedCorrelation, OutputQuantity, UncertaintyModel } from './uncertaintyModel.ts'

const keys = ['title', 'note', 'quantities', 'correlations', 'results', 'coverage', 'digits'] as const

/** Names that a formula can hold. */
const namePattern = /^\p{L}[\p{L}\p{Nd}_₀-₉]*$/u

/**
 * Reads a measurement model from YAML: named quantities with what is known of them, their correlations, and the formulas of what
 * comes out. All problems at once, each with its place. Formulas and units are checked here, so that what is returned can be computed.
 */
export function readModel(text: string, file: string): Outcome<UncertaintyModel> {
  const source = yamlSource(text.replace(/^\uFEFF/, ''), file)
  if (!source.ok) return source
  const reader = new ModelReader(source.value)
  const top = reader.entries(source.value.root, keys)
  const inputs = readInputs(top.get('quantities'), { reader, root: source.value.root })
  // Formulas are checked only where all their quantities were read: what follows from a first mistake is no second one.
  const sound = reader.problems.length === 0
  const correlations = readCorrelations(top.get('correlations'), { inputs, reader })
  const outputs = readOutputs(top.get('results'), { inputs, reader, sound, root: source.value.root })
  const plainText = (name: string): string | undefined => {
    const entry = top.get(name)
    return entry === undefined ? undefined : reader.text(entry.value, entry.key, 'a few words')
  }
  const share = (name: string, fallback: number, { least, most }: { least: number; most: number }): number => {
    const entry = top.get(name)
    if (entry === undefined) return fallback
    const read = parseQuantity(reader.text(entry.value, entry.key, String(fallback)) ?? '', 'ratio')
    if (read.ok && read.value >= least && read.value <= most) return read.value
    const what = `${name} must be ${least} to ${most}.`
    reader.complain(entry.key, { kind: 'modelValueUnreadable', what, mend: `Write "${name}: ${fallback}".` })
    return fallback
  }
  const model = {
    title: plainText('title') ?? file,
    note: plainText('note'),
    inputs: inputs.map((input) => (isCorrelated(input, correlations) ? jointly(input) : input)),
    ...{ correlations, outputs },
    coverage: share('coverage', 0.95, { least: 0.5, most: 0.9999 }),
    digits: Math.round(share('digits', 2, { least: 1, most: 3 })),
  }
  return reader.problems.length > 0 ? failed(...reader.problems) : done(model)
}

const isCorrelated = ({ name }: InputQuantity, correlations: readonly NamedCorrelation[]): boolean =>
  correlations.some(({ first, second }) => first === name || second === name)

/** Correlated quantities are drawn from a joint normal distribution (JCGM 101:2008, 6.4.8); their degrees of freedom stay with the other method. */
function jointly(input: InputQuantity): InputQuantity {
  const { known } = input
  if (known.as !== 'distribution' || known.distribution.is !== 't') return input
  const { value, scale, degreesOfFreedom } = known.distribution
  const distribution = { is: 'normal', value, standardUncertainty: scale, degreesOfFreedom } as const
  return { ...input, known: { as: 'distribution', distribution } }
}

type Entry = { readonly key: Node; readonly value: Node | null } | undefined

function readInputs(entry: Entry, { reader, root }: { reader: ModelReader; root: Node }): readonly InputQuantity[] {
  const entries = reader.entries(entry?.value ?? null, undefined)
  if (entries.size === 0) {
    reader.complain(entry?.key ?? root, {
      kind: 'modelKeyMissing',
      what: 'The model has no quantities.',
      mend: 'Add "quantities:" with a name, a value and an uncertainty for each.',
    })
  }
  return [...entries].flatMap(([name, one]) => {
    if (!namePattern.test(name)) {
      const mend = 'Begin with a letter; letters, digits and _ may follow.'
      reader.complain(one.key, { kind: 'modelKeyUnknown', what: `"${name}" can be no name in a formula.`, mend })
      return []
    }
    const read = readQuantity(foldName(name), one, reader)
    return read === undefined ? [] : [read]
  })
}

function readCorrelations(
  entry: Entry,
  { inputs, reader }: { inputs: readonly InputQuantity[]; reader: ModelReader },
): readonly NamedCorrelation[] {
  if (entry === undefined) return []
  const items = isSeq(entry.value) ? entry.value.items : []
  return items.flatMap((item) => {
    const node = item as Node // yaml gives items as nodes
    const fields = reader.entries(node, ['between', 'and', 'coefficient'])
    const text = (name: string): string => {
      const field = fields.get(name)
      return field === undefined ? '' : (reader.text(field.value, field.key, 'V') ?? '')
    }
    const [first, second] = [foldName(text('between')), foldName(text('and'))]
    const read = parseQuantity(text('coefficient'), 'ratio')
    const known = [first, second].every((name) => inputs.some((input) => input.name === name)) && first !== second
    if (isMap(node) && known && read.ok && Math.abs(read.value) <= 1) {
      return [{ first, second, coefficient: read.value, place: reader.place(node) }]
    }
    reader.complain(isMap(node) ? node : entry.key, {
      kind: 'modelCorrelation',
      what: 'A correlation needs two quantities of this model and a coefficient of −1 to 1.',
      mend: 'Write "- { between: V, and: I, coefficient: -0.36 }".',
    })
    return []
  })
}

interface Reading {
  readonly inputs: readonly InputQuantity[]
  readonly reader: ModelReader
  readonly sound: boolean
  readonly root: Node
}

function readOutputs(entry: Entry, { inputs, reader, sound, root }: Reading): readonly OutputQuantity[] {
  const entries = reader.entries(entry?.value ?? null, undefined)
  if (entries.size === 0) {
    const mend = 'Add "results:" with a name and a formula for each, such as "mu: M/(r*F)".'
    reader.complain(entry?.key ?? root, { kind: 'modelKeyMissing', what: 'The model has no results.', mend })
  }
  return [...entries].flatMap(([name, one]) => {
    const fields = isMap(one.value) ? reader.entries(one.value, ['formula', 'unit', 'about']) : undefined
    const from = fields === undefined ? one : (fields.get('formula') ?? { key: one.key, value: null })
    const formula = reader.text(from.value, from.key, 'M/(r*F)')
    const written = fields?.get('unit')
    const unitText = written === undefined ? undefined : reader.text(written.value, written.key, 'mm')
    const unit = unitText === undefined ? undefined : anyUnit(unitText)
    if (unitText !== undefined && unit === undefined && written !== undefined) {
      const mend = 'Write it from known ones, such as mm³/(N·m).'
      reader.complain(written.key, { kind: 'modelUnits', what: `The unit "${unitText}" is not known.`, mend })
    }
    if (formula === undefined || !sound) return []
    const read = formulaIn(
      formula,
      inputs.map((input) => ({ name: input.name, exponents: input.unit.exponents })),
    )
    if (!read.ok) {
      const { at, what, mend } = read.fault
      reader.complain(from.value ?? from.key, { kind: 'modelFormula', what: `Letter ${at}: ${what}`, mend })
      return []
    }
    if (unit !== undefined && written !== undefined && !sameUnits(unit.exponents, read.formula.exponents)) {
      const what = `${name} comes out in ${unitInWords(read.formula.exponents)}, not in ${unit.text}.`
      reader.complain(written.key, { kind: 'modelUnits', what, mend: 'Check the formula, or take another unit.' })
      return []
    }
    return [{ name, formula, ...(unit === undefined ? {} : { unit }), place: reader.place(one.key, name) }]
  })
}
