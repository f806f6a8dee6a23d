import type { ChannelName } from '../../core/terms/index.ts'
import { plainDialect, type TableDialect, type TableEncoding } from '../write/index.ts'
import type { RunValues } from './runValues.ts'

/** First line of a record that nobody measured. */
export const inventedLine = 'Invented record: made by a virtual rig, nobody measured it'

const separators: Readonly<Record<string, TableDialect['separator']>> = {
  comma: ',',
  semicolon: ';',
  tab: '\t',
  aligned: 'aligned',
}

const unitPlaces: Readonly<Record<string, TableDialect['units']>> = {
  row: 'row',
  'square brackets': 'squareBrackets',
  'round brackets': 'roundBrackets',
  none: 'none',
}

const encodings: Readonly<Record<string, TableEncoding>> = {
  'UTF-8': 'utf-8',
  'UTF-8 with mark': 'utf-8-bom',
  'UTF-16LE': 'utf-16le',
  'UTF-16BE': 'utf-16be',
  'Latin-1': 'latin-1',
}

/** Units in which the numbers of a fixture's record are handy. */
const smallUnits: Readonly<Partial<Record<ChannelName, string>>> = {
  angularVelocity: '1/min',
  slidingSpeed: 'mm/s',
  torque: 'mN·m',
  gap: 'µm',
  angle: '°',
}

/** How the record is put down, from values that have passed every check. */
export function assembleDialect(values: RunValues): TableDialect {
  const word = (key: string, otherwise: string): string => values.text(`table.${key}`, otherwise)
  const own = values.has('table.preamble') ? values.text('table.preamble').split('\n') : []
  return {
    ...plainDialect,
    separator: separators[word('separator', 'comma')],
    decimalMark: word('decimalMark', 'point') === 'comma' ? ',' : '.',
    lineEnd: word('lineEnd', 'LF') === 'CRLF' ? '\r\n' : '\n',
    encoding: encodings[word('encoding', 'UTF-8')],
    language: word('language', 'English') === 'German' ? 'de' : 'en',
    units: unitPlaces[word('units', 'row')],
    unitNames: word('unitSet', 'SI') === 'small' ? smallUnits : {},
    preamble: word('label', 'yes') === 'yes' ? [inventedLine, ...own] : own,
    repeatHeadings: word('repeatHeadings', 'no') === 'yes',
  }
}
