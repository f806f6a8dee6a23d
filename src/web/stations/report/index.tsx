import '../acts.css'
import './report.css'
import type { ReactNode } from 'react'
import { go } from '../../frame/address.ts'
import { Empty } from '../../frame/Empty.tsx'
import { Link } from '../../frame/Link.tsx'
import type { StationProps } from '../../frame/stationProps.ts'
import { Waiting } from '../../frame/Waiting.tsx'
import { LackingList } from './LackingList.tsx'
import { TakeFile } from './TakeFile.tsx'
import { useReportPage } from './useReportPage.ts'
import { VerifyPart } from './VerifyPart.tsx'

/** The paper as it will print; at its side what it still lacks, and the ways to take it along. */
export default function Report({ study, rest }: StationProps): ReactNode {
  const reduced = study.records.filter(({ state }) => state === 'reduced')
  const chosen = reduced.find(({ id }) => rest[0] !== undefined && id.startsWith(rest[0])) ?? reduced[0]
  if (chosen === undefined) {
    return (
      <Empty
        shows="The paper will stand here page by page, with what it still lacks at its side. It needs a record that has been reduced."
        todo={<Link to={{ station: 'read' }}>Read a record</Link>}
      />
    )
  }
  return (
    <div className="report-page">
      <p className="no-print">
        <label>
          Report of{' '}
          <select value={chosen.id} onChange={(event) => go({ rest: [event.target.value.slice(0, 12)] })}>
            {reduced.map(({ id, name, sample }) => (
              <option key={id} value={id}>
                {name}
                {sample === null ? '' : ` (${sample})`}
              </option>
            ))}
          </select>
        </label>
      </p>
      <Paper key={chosen.id} study={study} record={chosen} />
    </div>
  )
}

function Paper({
  study,
  record,
}: {
  readonly study: StationProps['study']
  readonly record: StationProps['study']['records'][number]
}): ReactNode {
  const address = `/api/records/${record.id}/report.html`
  const page = useReportPage(address)
  const bare = record.name.replace(/\.[a-z0-9]{1,8}$/i, '')
  return (
    <div className="report-columns">
      <div className="report-paper">
        {page.state === 'reading' && <Waiting what="Setting the report" />}
        {page.state === 'missing' && (
          <p className="refused">This report cannot be set: the record has no result that counts.</p>
        )}
        {page.state === 'away' && <p className="refused">The server is away; the report comes when it is back.</p>}
        {page.state === 'here' && (
          <iframe key={page.turn} src={address} title={`Report of ${record.name}`} sandbox="" />
        )}
      </div>
      <aside className="report-side no-print" aria-label="Beside the report">
        <h3>Take it along</h3>
        <TakeFile
          address={`/api/records/${record.id}/report.pdf`}
          name={`${bare}.pdf`}
          words="Report as PDF"
          doing="Writing the PDF"
        />
        <TakeFile
          address={`/api/studies/${encodeURIComponent(study.id)}/package.zip`}
          name={`${study.id}.zip`}
          words="Study as data package"
          doing="Packing raw bytes, setups, results and checksums"
        />
        <VerifyPart record={record.id} />
        <LackingList items={page.items} study={study.id} record={record.id} />
      </aside>
    </div>
  )
}
