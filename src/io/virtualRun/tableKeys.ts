import type { ChoiceKey, Section } from '../setup/keyKinds.ts'

const choice = (choices: readonly string[], about: string): ChoiceKey => ({
  is: 'choice',
  choices,
  example: choices[0],
  default: choices[0],
  about,
})

/** How the record is put down. */
export const tableKeys: Section = {
  is: 'section',
  about: 'How the record is put down as a text table.',
  keys: {
    separator: choice(
      ['comma', 'semicolon', 'tab', 'aligned'],
      'What stands between the columns; "aligned" pads with blanks.',
    ),
    decimalMark: choice(['point', 'comma'], 'Decimal mark.'),
    language: choice(['English', 'German'], 'Language of the headings.'),
    units: choice(['row', 'square brackets', 'round brackets', 'none'], 'Where the units stand.'),
    unitSet: choice(['SI', 'small'], 'SI, or units in which the numbers are handy: 1/min, mN·m, N, µm, °.'),
    encoding: choice(['UTF-8', 'UTF-8 with mark', 'UTF-16LE', 'UTF-16BE', 'Latin-1'], 'How bytes stand for letters.'),
    lineEnd: choice(['LF', 'CRLF'], 'How a row ends.'),
    stepColumn: choice(['yes', 'no'], 'Whether a column numbers the steps.'),
    angleColumn: choice(['yes', 'no'], 'Whether a column holds the angle.'),
    repeatHeadings: choice(['no', 'yes'], 'Whether headings come again at every step.'),
    label: choice(['yes', 'no'], 'Whether the first line says that the record is invented.'),
    preamble: { is: 'text', example: 'Lacquer A, first mounting', about: 'Further lines before the headings.' },
  },
}
