import { type ReactNode, useState } from 'react'
import { type Dimension, parseQuantity } from '../../../core/quantity/index.ts'
import { refresh } from '../../api/kept.ts'
import { Away, Refusal, request } from '../../api/request.ts'
import { labPaper } from '../../api/usePaper.ts'
import { writer } from '../../api/writer.ts'
import { Refused } from '../../frame/Refused.tsx'
import { identifierOf } from './identifierOf.ts'

/** A field of an own entry: words where no dimension is given. */
export interface AddField {
  readonly key: string
  readonly words: string
  readonly dimension?: Dimension
  /** A value as people write it, shown in the empty field. */
  readonly such: string
  readonly must?: true
}

/** What was typed, read into SI where it is a quantity. */
export type Added = Readonly<Record<string, string | number>>

interface AddFormProps {
  readonly kind: 'material' | 'liquid' | 'rig'
  /** "material", "liquid": what is added. */
  readonly what: string
  readonly fields: readonly AddField[]
  readonly contentOf: (added: Added & { readonly name: string }) => unknown
  /** What is wrong with the whole, in words; undefined where nothing is. */
  readonly judge?: (added: Added & { readonly name: string }) => string | undefined
}

/** Adds an entry of the lab's own: a name and values with their units; each refusal stands at its field. */
export function AddForm({ kind, what, fields, contentOf, judge }: AddFormProps): ReactNode {
  const [open, setOpen] = useState(false)
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({})
  const [wrong, setWrong] = useState<Readonly<Record<string, string>>>({})
  const [refusal, setRefusal] = useState<Refusal>()
  const [said, setSaid] = useState('')
  const keep = async (): Promise<void> => {
    const { added, faults } = readFields(fields, typed)
    const name = typed.name?.trim() ?? ''
    const whole = Object.keys(faults).length === 0 ? judge?.({ ...added, name }) : undefined
    const all = { ...faults, ...(whole === undefined ? {} : { '': whole }) }
    setWrong(all)
    if (Object.keys(all).length > 0) return
    setRefusal(undefined)
    try {
      const body = {
        content: contentOf({ ...added, name }),
        by: writer() === '' ? 'somebody' : writer(),
        why: `${what} ${name} added`,
      }
      await request(labPaper(kind, identifierOf(name)), { method: 'PUT', body, headers: { 'if-match': '"0"' } })
      refresh('/api/lab')
      setTyped({})
      setOpen(false)
      setSaid(`${name} is kept.`)
    } catch (error) {
      if (error instanceof Refusal) setRefusal(error)
      else if (error instanceof Away)
        setWrong({ '': 'The server is away; what you typed stays here. Keep it once more when it is back.' })
      else throw error
    }
  }
  if (!open) {
    return (
      <p>
        <button type="button" onClick={() => setOpen(true)}>
          Add a {what} of your own
        </button>{' '}
        <span role="status">{said}</span>
      </p>
    )
  }
  const every: readonly AddField[] = [{ key: 'name', words: 'name', such: `our ${what}`, must: true }, ...fields]
  return (
    <form
      className="add-form"
      aria-label={`Add a ${what}`}
      onSubmit={(event) => {
        event.preventDefault()
        void keep()
      }}
    >
      {every.map(({ key, words, such, must }) => (
        <label key={key}>
          <span>
            {words}
            {must === true ? '' : ' (if known)'}
          </span>
          <input
            value={typed[key] ?? ''}
            placeholder={such}
            aria-invalid={wrong[key] !== undefined}
            maxLength={200}
            onChange={(event) => setTyped({ ...typed, [key]: event.target.value })}
          />
          {wrong[key] !== undefined && (
            <span className="refused" role="alert">
              {wrong[key]}
            </span>
          )}
        </label>
      ))}
      {wrong[''] !== undefined && (
        <p className="refused" role="alert">
          {wrong['']}
        </p>
      )}
      {refusal !== undefined && <Refused refusal={refusal} />}
      <p>
        <button type="submit" className="main-act">
          Keep it
        </button>{' '}
        <button type="button" onClick={() => setOpen(false)}>
          Leave it
        </button>
      </p>
    </form>
  )
}

function readFields(fields: readonly AddField[], typed: Readonly<Record<string, string>>) {
  const added: Record<string, string | number> = {}
  const faults: Record<string, string> = {}
  if ((typed.name ?? '').trim() === '') faults.name = 'Write a name.'
  for (const { key, dimension, must, such } of fields) {
    const text = (typed[key] ?? '').trim()
    if (text === '') {
      if (must === true) faults[key] = `Write it, such as ${such}.`
      continue
    }
    if (dimension === undefined) added[key] = text
    else {
      const read = parseQuantity(text, dimension)
      if (read.ok) added[key] = read.value
      else faults[key] = `${read.what} ${read.mend}`
    }
  }
  return { added, faults }
}
