import { type ReactNode, useRef, useState } from 'react'
import { printQuantity } from '../../../core/quantity/index.ts'
import { Waiting } from '../../frame/Waiting.tsx'

interface TakeFileProps {
  readonly address: string
  /** Name under which it is saved. */
  readonly name: string
  /** What the button says. */
  readonly words: string
  /** What goes on meanwhile: "Writing the PDF". */
  readonly doing: string
}

/** Gets a file from the server and saves it; tells how much has come, and can be stopped. */
export function TakeFile({ address, name, words, doing }: TakeFileProps): ReactNode {
  const [come, setCome] = useState<number>()
  const [trouble, setTrouble] = useState('')
  const stop = useRef<AbortController>(undefined)
  const take = async (): Promise<void> => {
    stop.current = new AbortController()
    setTrouble('')
    setCome(0)
    try {
      const answer = await fetch(address, { signal: stop.current.signal })
      if (!answer.ok) throw new Error(await reasonOf(answer))
      save(await blobOf(answer, setCome), name)
    } catch (error) {
      if (!stop.current.signal.aborted) setTrouble(error instanceof Error ? error.message : String(error))
    } finally {
      setCome(undefined)
    }
  }
  return (
    <div className="take-file">
      <button type="button" className="main-act" disabled={come !== undefined} onClick={() => void take()}>
        {words}
      </button>
      {come !== undefined && (
        <Waiting
          what={come === 0 ? doing : `${doing}, ${printBytes(come)} so far`}
          stop={() => stop.current?.abort()}
        />
      )}
      {trouble !== '' && (
        <p className="refused" role="alert">
          {trouble}
        </p>
      )}
    </div>
  )
}

const printBytes = (bytes: number): string =>
  bytes < 1e6 ? `${Math.round(bytes / 1e3)} kB` : `${printQuantity(bytes / 1e6, 'ratio', { digits: 3, unit: '1' })} MB`

async function reasonOf(answer: Response): Promise<string> {
  try {
    const { detail, title } = await answer.json()
    return String(detail ?? title)
  } catch {
    return `The server answered ${answer.status}.`
  }
}

async function blobOf(answer: Response, come: (bytes: number) => void): Promise<Blob> {
  const parts: BlobPart[] = []
  let bytes = 0
  const reader = answer.body?.getReader()
  for (;;) {
    const read = await reader?.read()
    if (read === undefined || read.done) break
    parts.push(read.value)
    bytes += read.value.length
    come(bytes)
  }
  return new Blob(parts, { type: answer.headers.get('content-type') ?? 'application/octet-stream' })
}

function save(blob: Blob, name: string): void {
  const address = URL.createObjectURL(blob)
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
