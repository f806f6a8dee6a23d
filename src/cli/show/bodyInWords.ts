import type { KnownValue, Material } from '../../core/material/index.ts'
import { type Dimension, printQuantity } from '../../core/quantity/index.ts'
import { painted, type Screen } from '../screen.ts'
import { type TableColumn, textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

/** A body with every value, its span, and where it comes from. */
export function bodyInWords(body: Material, screen: Screen): string {
  const rows = rowsOf(body)
  const column = (head: string, of: (row: Row) => string): TableColumn => ({
    head,
    unit: '',
    align: 'left',
    cells: rows.map(of),
  })
  const print = ({ dimension, unit }: Row, value: number): string =>
    dimension === undefined
      ? `${Number(value.toPrecision(4))}${unit === '' ? '' : ` ${unit}`}`
      : printQuantity(value, dimension, { digits: 3 })
  const table = textTable([
    column('value', ({ name }) => name),
    column('usual', (row) => print(row, row.known.value)),
    column('from', (row) => print(row, row.known.low)),
    column('to', (row) => print(row, row.known.high)),
    column('source', ({ known }) => known.source),
  ])
  const width = Math.min(screen.width, 110)
  const line = (text: string): string => wrap(text, width, { indent: '  ' })
  const names = body.synonyms.length === 0 ? [] : [line(`Also: ${body.synonyms.join(', ')}.`)]
  const note = body.note === undefined ? [] : [line(body.note)]
  return `${[painted(screen, `${body.name} (${body.family})`, 'accent'), table, ...names, ...note].join('\n')}\n`
}

interface Row {
  readonly name: string
  readonly known: KnownValue
  readonly dimension?: Dimension
  readonly unit: string
}

function rowsOf(body: Material): readonly Row[] {
  const { elasticModulus, poissonRatio, density, strength, conductivity, heatCapacity } = body
  const row = (name: string, known: KnownValue | undefined, of: Pick<Row, 'unit' | 'dimension'>): readonly Row[] =>
    known === undefined ? [] : [{ name, known, ...of }]
  return [
    ...row('elastic modulus', elasticModulus, { unit: '', dimension: 'pressure' }),
    ...row('Poisson ratio', poissonRatio, { unit: '' }),
    ...row('density', density, { unit: 'kg/m³' }),
    ...row(`strength (${strength?.kind ?? ''})`, strength, { unit: '', dimension: 'pressure' }),
    ...body.hardness.flatMap((hardness) => row(`hardness ${hardness.scale}`, hardness, { unit: '' })),
    ...row('conductivity', conductivity, { unit: 'W/(m·K)' }),
    ...row('specific heat', heatCapacity, { unit: 'J/(kg·K)' }),
    ...body.finishes.flatMap((finish) => row(`Ra, ${finish.finish}`, finish, { unit: '', dimension: 'length' })),
  ]
}
