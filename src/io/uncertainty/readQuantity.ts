import { isSeq, type Node } from 'yaml'
import { type AnyUnit, parseQuantity, readAnyQuantity, sameUnits, unitInWords } from '../../core/quantity/index.ts'
import { typeA } from '../../core/stats/index.ts'
import { type Distribution, distributionFault } from '../../core/stats/judging/index.ts'
import type { ModelReader } from './modelReader.ts'
import type { InputQuantity, RecordQuantity } from './uncertaintyModel.ts'

const keys = [
  'value',
  'standardUncertainty',
  'expandedUncertainty',
  'coverageFactor',
  'degreesOfFreedom',
  'plusMinus',
  'shape',
  'top',
  'plusMinusWithin',
  'readings',
  'counted',
  'result',
  'frictionAt',
  'about',
] as const

const shapes = [
  'rectangular',
  'triangular',
  'trapezoidal',
  'arcsine',
  'curvilinear',
  'normal',
  't',
  'exponential',
] as const

/** Reads one quantity of a model; undefined where something was wrong, which the reader then holds. */
export function readQuantity(
  name: string,
  { key, value }: { key: Node; value: Node | null },
  reader: ModelReader,
): InputQuantity | undefined {
  const before = reader.problems.length
  const entries = reader.entries(value, keys)
  const place = reader.place(key, name)
  const fields = new Fields(entries, key, reader)
  if (entries.has('readings')) return ofReadings(name, entries.get('readings')?.value ?? null, { key, reader })
  if (entries.has('result')) return ofRecord(name, fields, { key, reader })
  const counted = fields.number('counted')
  const main = counted === undefined ? fields.quantity('value') : { value: counted, unit: plain }
  if (main === undefined) {
    if (reader.problems.length === before) {
      reader.complain(key, {
        kind: 'modelKeyMissing',
        what: `${name} has no value.`,
        mend: 'Write "value: 5 N", or readings, or a result with frictionAt.',
      })
    }
    return undefined
  }
  const distribution = counted === undefined ? distributionOf(main, fields) : { is: 'counted' as const, count: counted }
  if (reader.problems.length > before || distribution === undefined) return undefined
  const fault = distributionFault(distribution)
  if (fault === undefined) return { name, unit: main.unit, place, known: { as: 'distribution', distribution } }
  reader.complain(key, { kind: 'modelValueUnreadable', what: `${name}: ${fault}.`, mend: 'Correct it.' })
  return undefined
}

const plain: AnyUnit = { text: '1', factor: 1, offset: 0, exponents: [0, 0, 0, 0, 0] }

interface Main {
  readonly value: number
  readonly unit: AnyUnit
}

/** The fields of one quantity, each read when it is asked for. */
class Fields {
  private readonly entries: ReadonlyMap<string, { key: Node; value: Node | null }>
  private readonly key: Node
  private readonly reader: ModelReader

  constructor(entries: Fields['entries'], key: Node, reader: ModelReader) {
    this.entries = entries
    this.key = key
    this.reader = reader
  }

  text(name: string, example: string): string | undefined {
    const entry = this.entries.get(name)
    return entry === undefined ? undefined : this.reader.text(entry.value, entry.key, example)
  }

  quantity(name: string): Main | undefined {
    const text = this.text(name, '5 N')
    if (text === undefined) return undefined
    const read = readAnyQuantity(text)
    if (read.ok) return { value: read.value, unit: read.unit }
    return this.refuse(name, read)
  }

  number(name: string): number | undefined {
    const text = this.text(name, '9')
    if (text === undefined) return undefined
    const read = parseQuantity(text, 'ratio')
    return read.ok ? read.value : this.refuse(name, read)
  }

  /** A width in the unit of the value, or a share of it. */
  width(name: string, main: Main): number | undefined {
    const text = this.text(name, '0.02 N')
    if (text === undefined) return undefined
    const read = readAnyQuantity(text)
    if (!read.ok) return this.refuse(name, read)
    const { value, unit } = read
    const free = [main.unit.exponents, unit.exponents].map((exponents) => sameUnits(exponents, plain.exponents))
    if (!free[0] && free[1]) return Math.abs(main.value) * value
    if (free[0] && unit.text === '%' && main.unit.text !== '%') return Math.abs(main.value) * value
    // A difference of temperatures has no zero of its own.
    const difference = unit.offset === 0 ? value : value - unit.offset
    if (sameUnits(unit.exponents, main.unit.exponents)) return difference
    const what = `${name} is ${unitInWords(unit.exponents)}, the value ${unitInWords(main.unit.exponents)}.`
    return this.refuse(name, { what, mend: 'Write it in the unit of the value, or as a share in %.' })
  }

  choice<T extends string>(name: string, choices: readonly T[]): T | undefined {
    const text = this.text(name, choices[0])
    if (text === undefined) return undefined
    const found = choices.find((choice) => choice === text)
    return (
      found ?? this.refuse(name, { what: `There is no ${name} "${text}".`, mend: `Use one of ${choices.join(', ')}.` })
    )
  }

  refuse(name: string, { what, mend }: { what: string; mend: string }): undefined {
    const at = this.entries.get(name)
    this.reader.complain(at?.value ?? at?.key ?? this.key, { kind: 'modelValueUnreadable', what, mend })
    return undefined
  }

  has(name: string): boolean {
    return this.entries.has(name)
  }
}

/** What the fields beside the value say of it. */
function distributionOf(main: Main, fields: Fields): Distribution | undefined {
  const { value } = main
  const said = ['standardUncertainty', 'expandedUncertainty', 'plusMinus'].filter((name) => fields.has(name))
  if (said.length > 1)
    return fields.refuse(said[1], { what: `Both ${said[0]} and ${said[1]} are given.`, mend: 'Keep one.' })
  const shape = fields.choice('shape', shapes)
  if (shape === 'exponential') return { is: 'exponential', value }
  if (said.length === 0) return { is: 'exact', value }
  if (said[0] === 'plusMinus') return ofWidth(main, fields, shape ?? 'rectangular')
  const degreesOfFreedom = fields.number('degreesOfFreedom')
  const size = fields.width(said[0], main)
  if (size === undefined) return undefined
  const factor = said[0] === 'expandedUncertainty' ? fields.number('coverageFactor') : 1
  if (factor === undefined || !(factor > 0)) {
    const what = 'An expanded uncertainty needs its coverage factor.'
    return fields.refuse(said[0], { what, mend: 'Write "coverageFactor: 2", or whatever the certificate says.' })
  }
  const standardUncertainty = size / factor
  // An uncertainty that is itself known from few readings is a scaled t (JCGM 101:2008, 6.4.9.7).
  if (shape !== 'normal' && degreesOfFreedom !== undefined) {
    return { is: 't', value, scale: standardUncertainty, degreesOfFreedom }
  }
  return { is: 'normal', value, standardUncertainty, ...(degreesOfFreedom === undefined ? {} : { degreesOfFreedom }) }
}

function ofWidth(main: Main, fields: Fields, shape: (typeof shapes)[number]): Distribution | undefined {
  const { value } = main
  const halfWidth = fields.width('plusMinus', main)
  if (halfWidth === undefined) return undefined
  switch (shape) {
    case 'triangular':
    case 'arcsine':
    case 'rectangular':
      return { is: shape, value, halfWidth }
    case 'trapezoidal':
      return { is: shape, value, halfWidth, topShare: fields.number('top') ?? 0.5 }
    case 'curvilinear': {
      const halfWidthHalfWidth = fields.width('plusMinusWithin', main)
      if (halfWidthHalfWidth !== undefined)
        return { is: 'curvilinearTrapezoidal', value, halfWidth, halfWidthHalfWidth }
      return fields.refuse('shape', {
        what: 'A curvilinear shape needs plusMinusWithin.',
        mend: 'Say within what the half-width is known.',
      })
    }
    default:
      return fields.refuse('shape', {
        what: `plusMinus does not go with the shape ${shape}.`,
        mend: 'Use standardUncertainty instead.',
      })
  }
}

/** Mean and type A uncertainty of readings, a scaled t as JCGM 101:2008, 6.4.9 has it. */
function ofReadings(
  name: string,
  node: Node | null,
  { key, reader }: { key: Node; reader: ModelReader },
): InputQuantity | undefined {
  const items = isSeq(node) ? node.items : []
  const read = items.map((item) => readAnyQuantity(reader.text(item as Node, key, '[5.01 N, 4.98 N]') ?? ''))
  const bad = read.find((one) => !one.ok)
  if (bad !== undefined && !bad.ok) {
    reader.complain(key, { kind: 'modelValueUnreadable', what: `A reading of ${name}: ${bad.what}`, mend: bad.mend })
    return undefined
  }
  const good = read.flatMap((one) => (one.ok ? [one] : []))
  const [first] = good
  if (good.length < 2 || good.some(({ unit }) => !sameUnits(unit.exponents, first.unit.exponents))) {
    const what = good.length < 2 ? `${name} has fewer than two readings.` : `The readings of ${name} have unlike units.`
    reader.complain(key, { kind: 'modelValueUnreadable', what, mend: 'Write "readings: [5.01 N, 4.98 N, 5.03 N]".' })
    return undefined
  }
  const { mean, standardUncertainty, degreesOfFreedom } = typeA(good.map(({ value }) => value))
  const distribution: Distribution = { is: 't', value: mean, scale: standardUncertainty, degreesOfFreedom }
  return { name, unit: first.unit, place: reader.place(key, name), known: { as: 'distribution', distribution } }
}

function ofRecord(
  name: string,
  fields: Fields,
  { key, reader }: { key: Node; reader: ModelReader },
): InputQuantity | undefined {
  const file = fields.text('result', 'wax.json')
  const at = fields.text('frictionAt', '10 mm/s')
  if (file === undefined || at === undefined) {
    const what = `${name} comes from a result, but nobody said at which speed.`
    reader.complain(key, { kind: 'modelKeyMissing', what, mend: 'Add "frictionAt: 10 mm/s".' })
    return undefined
  }
  const speed = parseQuantity(at, 'velocity')
  if (!speed.ok) return fields.refuse('frictionAt', speed)
  const known: RecordQuantity = { as: 'record', file, slidingSpeed: speed.value }
  return { name, unit: plain, place: reader.place(key, name), known }
}
