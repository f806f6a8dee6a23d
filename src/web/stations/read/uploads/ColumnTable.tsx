import type { ReactNode } from 'react'
import type { UploadLook } from '../../../../server/contract/index.ts'
import { ColumnHeading } from './ColumnHeading.tsx'
import type { Upload } from './upload.ts'
import { mendReading } from './uploadDesk.ts'

/** The first rows of a file under what its columns were taken for; each heading can be mended. */
export default function ColumnTable({
  upload,
  look,
}: {
  readonly upload: Upload
  readonly look: UploadLook
}): ReactNode {
  const { head, columns } = look
  if (head === null) return null
  const badLines = new Map(
    look.problems.flatMap(({ place, what }) => (place.line === undefined ? [] : [[place.line, what]])),
  )
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls must be reachable by keyboard
    <section className="column-table" tabIndex={0} aria-label={`First rows of ${look.name}`}>
      <table>
        <thead>
          <tr>
            <th scope="col" className="line-number">
              line
            </th>
            {head.headings.map((heading, index) => {
              const guess = columns.find(({ column }) => column === index + 1)
              return (
                // biome-ignore lint/suspicious/noArrayIndexKey: two columns may bear one heading
                <th scope="col" key={index}>
                  {guess === undefined ? (
                    heading
                  ) : (
                    <ColumnHeading
                      guess={guess}
                      mend={({ channel, unit }) => {
                        const said = { channel, ...(unit === undefined ? {} : { unit }) }
                        const columns = { ...upload.reading.columns, [`#${index + 1}`]: said }
                        void mendReading(upload.key, { ...upload.reading, columns })
                      }}
                    />
                  )}
                </th>
              )
            })}
          </tr>
          <tr className="reasons">
            <td />
            {head.headings.map((heading, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two columns may bear one heading
              <td key={`${index} ${heading}`}>{columns.find(({ column }) => column === index + 1)?.reason ?? ''}</td>
            ))}
          </tr>
        </thead>
        <tbody>
          {head.rows.slice(0, 8).map((row, index) => {
            const line = head.firstLine + index
            const bad = badLines.get(line)
            return (
              <tr key={line} className={bad === undefined ? '' : 'bad-row'} title={bad}>
                <td className="line-number">{line}</td>
                {row.map((cell, at) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: cells have no name but their place
                  <td key={at}>{cell}</td>
                ))}
              </tr>
            )
          })}
        </tbody>
      </table>
    </section>
  )
}
