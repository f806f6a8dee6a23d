import { siUnit, type Unit, unitNamed } from '../../core/quantity/index.ts'
import type { ChannelName } from '../../core/terms/index.ts'
import { channelDimensions } from '../setup/index.ts'
import type { TableDialect } from './tableDialect.ts'

/** One column as it will be written: SI value = factor·written + offset. */
export interface TableColumn {
  readonly name: ChannelName
  readonly heading: string
  readonly unit: string
  readonly factor: number
  readonly offset: number
  readonly digits: number
}

const words: Readonly<Record<TableDialect['language'], Readonly<Record<ChannelName, string>>>> = {
  en: {
    time: 'Time',
    step: 'Step',
    angularVelocity: 'Angular velocity',
    slidingSpeed: 'Sliding speed',
    torque: 'Torque',
    frictionForce: 'Friction force',
    axialForce: 'Axial force',
    angle: 'Angle',
    gap: 'Gap',
    temperature: 'Temperature',
  },
  de: {
    time: 'Zeit',
    step: 'Schritt',
    angularVelocity: 'Winkelgeschwindigkeit',
    slidingSpeed: 'Gleitgeschwindigkeit',
    torque: 'Drehmoment',
    frictionForce: 'Reibkraft',
    axialForce: 'Normalkraft',
    angle: 'Drehwinkel',
    gap: 'Spalt',
    temperature: 'Temperatur',
  },
}

/** A speed in turns per time is called by another word than one in radians. */
const turnWords: Readonly<Record<TableDialect['language'], string>> = { en: 'Rotational speed', de: 'Drehzahl' }

/** Enough for microseconds over thirty years, and free of the last bits that binary adds to tenths. */
const timeDigits = 15

/** The columns of a table. Throws RangeError for a unit that is none of the channel. */
export function headedColumns(names: readonly ChannelName[], dialect: TableDialect): readonly TableColumn[] {
  return names.map((name) => {
    const unit = unitOf(name, dialect)
    const turns = name === 'angularVelocity' && !/rad|°/.test(unit.text)
    const word = turns ? turnWords[dialect.language] : words[dialect.language][name]
    return {
      name,
      heading: dialect.headings[name] ?? word,
      unit: name === 'step' ? '' : (dialect.unitNames[name] ?? unit.text),
      factor: unit.factor,
      offset: unit.offset,
      digits: name === 'time' || name === 'step' ? timeDigits : dialect.digits,
    }
  })
}

function unitOf(name: ChannelName, dialect: TableDialect): Unit {
  const usual = name === 'temperature' ? '°C' : siUnit(channelDimensions[name])
  return unitNamed(dialect.unitNames[name] ?? usual, channelDimensions[name])
}

/** The lines that name the columns, without line ends. */
export function headingLines(columns: readonly TableColumn[], dialect: TableDialect): readonly string[] {
  const around = { squareBrackets: ['[', ']'], roundBrackets: ['(', ')'] }
  const style = dialect.units
  if (style === 'none' || style === 'row') {
    const headings = join(
      columns.map((column) => column.heading),
      dialect,
    )
    return style === 'none'
      ? [headings]
      : [
          headings,
          join(
            columns.map((column) => column.unit),
            dialect,
          ),
        ]
  }
  const [open, close] = around[style]
  const named = columns.map((column) =>
    column.unit === '' ? column.heading : `${column.heading} ${open}${column.unit}${close}`,
  )
  return [join(named, dialect)]
}

/** Width of one aligned column, which no heading or number of up to 13 digits fills. */
export const alignedWidth = 32

function join(cells: readonly string[], dialect: TableDialect): string {
  if (dialect.separator === 'aligned')
    return cells.map((cell) => (cell === '' ? '-' : cell).padStart(alignedWidth)).join('')
  return cells.map((cell) => (cell.includes(dialect.separator) ? `"${cell}"` : cell)).join(dialect.separator)
}
