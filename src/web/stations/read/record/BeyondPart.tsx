import type { ReactNode } from 'react'
import type { BeyondAnswer } from '../../../../server/contract/index.ts'
import { useKept } from '../../../api/kept.ts'
import { Refused } from '../../../frame/Refused.tsx'
import { Waiting } from '../../../frame/Waiting.tsx'
import { DrawnPicture } from './DrawnPicture.tsx'

type Part = BeyondAnswer['parts'][number]

/** What the record says of starts, holds, loops, vibration, wear and the turn; a line for what it cannot say. */
export default function BeyondPart({ record }: { readonly record: string }): ReactNode {
  const { value, refusal } = useKept<BeyondAnswer>(`/api/records/${record}/beyond`)
  if (refusal !== undefined) return <Refused refusal={refusal} />
  if (value === undefined) return <Waiting what="Looking beyond the curve" />
  return (
    <>
      {value.parts.map((part) => (
        <Told key={part.heading} part={part} />
      ))}
      {value.missing.length > 0 && (
        <ul className="beyond-missing quiet" aria-label="What this record does not tell">
          {value.missing.map(({ heading, takes }) => (
            <li key={heading}>
              {heading}: {takes}
            </li>
          ))}
        </ul>
      )}
    </>
  )
}

function Told({ part: { heading, sentences, table, picture } }: { readonly part: Part }): ReactNode {
  const [first, ...rest] = sentences
  const id = `beyond-${heading.replaceAll(/[^a-z]+/gi, '-').toLowerCase()}`
  return (
    <section aria-labelledby={id}>
      <h4 id={id}>{heading}</h4>
      <p className="say">{first}</p>
      {picture !== null && <DrawnPicture picture={picture} />}
      {table !== null && <Numbers table={table} />}
      {rest.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </section>
  )
}

const Numbers = ({ table: { caption, columns, rows } }: { readonly table: NonNullable<Part['table']> }): ReactNode => (
  // Wide tables scroll in their own place, by keyboard as well.
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a place that scrolls must be reached by keyboard
  <section className="beyond-table" aria-label={caption} tabIndex={0}>
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.join(' ')}>
            {columns.map((column, at) => (
              <td key={column}>{row[at]}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </section>
)
