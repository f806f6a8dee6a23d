import '../acts.css'
import './read.css'
import { type ReactNode, useState } from 'react'
import { studyPaper, usePaper } from '../../api/usePaper.ts'
import { Empty } from '../../frame/Empty.tsx'
import type { StationProps } from '../../frame/stationProps.ts'
import { type SheetPaper, sheetForRecord } from '../rig-up/sheetPaper.ts'
import { RecordPage } from './record/RecordPage.tsx'
import { DemoShelf } from './shelf/DemoShelf.tsx'
import { Shelf } from './shelf/Shelf.tsx'
import { SetupPart } from './uploads/SetupPart.tsx'
import { useSetupStand, useSetupText } from './uploads/setupChoice.ts'
import { UploadList } from './uploads/UploadList.tsx'
import { dropFiles } from './uploads/uploadDesk.ts'
import { useUploads } from './uploads/useUploads.ts'

/** Records in: dropped, their columns mended, kept with a setup. Records out: a shelf of curves, and each one by itself. */
export default function Read({ study, question, rest, search }: StationProps): ReactNode {
  const [first, second] = rest
  if (first !== undefined && first !== 'add') {
    return <RecordPage study={study} question={question} record={first} step={second} search={search} />
  }
  return <ShelfPage study={study} question={question} open={first === 'add' ? Number(second) : null} />
}

type ShelfPageProps = Pick<StationProps, 'study' | 'question'> & { readonly open: number | null }

function ShelfPage({ study, question, open }: ShelfPageProps): ReactNode {
  const uploads = useUploads(study.id)
  const text = useSetupText(study.id)
  const stand = useSetupStand(text)
  const [over, setOver] = useState(false)
  const drop = (files: readonly File[]): void => {
    if (files.length > 0) dropFiles(study.id, files)
  }
  const { content } = usePaper<SheetPaper>(studyPaper(study.id, 'runSheet'))
  const sheet = content === null ? undefined : sheetForRecord(content)
  const [along, setAlong] = useState(true)
  const sound = stand.state === 'sound' && stand.text === text
  const kept = sound ? { setup: text, sheet: along ? sheet : undefined } : undefined
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: files are also chosen by keyboard in the first sentence
    <div
      className="read-page"
      data-over={over}
      onDragOver={(event) => {
        if (!event.dataTransfer.types.includes('Files')) return
        event.preventDefault()
        setOver(true)
      }}
      onDragLeave={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget instanceof Node ? event.relatedTarget : null))
          setOver(false)
      }}
      onDrop={(event) => {
        event.preventDefault()
        setOver(false)
        drop([...event.dataTransfer.files])
      }}
    >
      <p className="say">
        Drop records anywhere on this page, or <Picker drop={drop} />. Tables as text, spreadsheets and Parquet are
        read.
      </p>
      {uploads.length > 0 && (
        <div className="adding">
          <SetupPart study={study.id} question={question.content} text={text} stand={stand} />
          {sheet !== undefined && (
            <p>
              <label>
                <input type="checkbox" checked={along} onChange={(event) => setAlong(event.target.checked)} /> The run
                sheet filled in at Rig up goes with them ({sheet.answers.length}{' '}
                {sheet.answers.length === 1 ? 'answer' : 'answers'})
              </label>
            </p>
          )}
          <UploadList uploads={uploads} open={open} kept={kept} />
        </div>
      )}
      {study.records.length > 0 ? (
        <Shelf records={study.records} samples={study.samples} />
      ) : (
        uploads.length === 0 && (
          <Empty
            shows="Each record will lie here as a small curve with its remarks as signs; opened, its raw channels above and its curve below."
            todo={<span>Choose or drop the first file above.</span>}
          >
            <DemoShelf />
          </Empty>
        )
      )}
    </div>
  )
}

/** Opens the browser's own way to choose files. */
const Picker = ({ drop }: { readonly drop: (files: readonly File[]) => void }): ReactNode => (
  <label className="pick">
    choose files
    <input
      type="file"
      multiple
      className="unseen"
      onChange={(event) => {
        drop([...(event.target.files ?? [])])
        // The same file may be chosen once more.
        event.target.value = ''
      }}
    />
  </label>
)
