import type { ReactNode } from 'react'
import type { ReadingAnswers } from '../../../../server/contract/index.ts'
import { Choice } from '../../../sentence/Choice.tsx'
import type { Upload } from './upload.ts'
import { mendReading } from './uploadDesk.ts'

const separators = [
  { value: '', words: 'as found' },
  { value: ',', words: 'commas' },
  { value: ';', words: 'semicolons' },
  { value: '\t', words: 'tabs' },
  { value: ' ', words: 'blanks' },
  { value: '|', words: 'bars' },
] as const

const marks = [
  { value: '', words: 'as found' },
  { value: '.', words: 'a point' },
  { value: ',', words: 'a comma' },
] as const

/** How the file is written, where the program did not see it by itself. */
export function Writing({ upload: { key, reading } }: { readonly upload: Upload }): ReactNode {
  const put = (said: Partial<ReadingAnswers>): void => {
    const next = { ...reading, ...said }
    void mendReading(key, Object.fromEntries(Object.entries(next).filter(([, value]) => value !== undefined)))
  }
  return (
    <p>
      Cells are parted by{' '}
      <Choice
        name="What parts the cells"
        value={reading.separator ?? ''}
        options={separators}
        change={(separator) => put({ separator: separator === '' ? undefined : separator })}
      />
      , decimals begin with{' '}
      <Choice
        name="Decimal mark"
        value={reading.decimalMark ?? ''}
        options={marks}
        change={(decimalMark) => put({ decimalMark: decimalMark === '' ? undefined : decimalMark })}
      />
      .
    </p>
  )
}
