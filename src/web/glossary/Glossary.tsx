import { type ReactNode, useEffect, useState } from 'react'
import { go } from '../frame/address.ts'
import { Dialog } from '../frame/Dialog.tsx'
import { wordParts } from './words.ts'

/** What the words mean, with formula and source; opened at one of them. */
export default function Glossary({ word }: { readonly word: string }): ReactNode {
  const [text, setText] = useState('')
  const close = (): void => go({ search: { word: null } })
  useEffect(() => document.getElementById(`word-${word}`)?.scrollIntoView({ block: 'center' }), [word])
  const wanted = text.toLowerCase().trim()
  const parts = wordParts.map(({ name, words }) => ({
    name,
    words: words.filter((one) => `${one.name} ${one.meaning}`.toLowerCase().includes(wanted)),
  }))
  return (
    <Dialog title="What the words mean" close={close} aside>
      <label>
        Look for <input value={text} onChange={(event) => setText(event.target.value)} spellCheck={false} />
      </label>
      {parts.map(({ name, words }) =>
        words.length === 0 ? null : (
          <section key={name}>
            <h3>{name}</h3>
            <dl className="glossary">
              {words.map(({ key, name: called, meaning, formula, source }) => (
                <div key={key} id={`word-${key}`} aria-current={key === word ? 'true' : undefined}>
                  <dt>{called}</dt>
                  <dd>
                    {meaning}
                    {formula !== undefined && <span className="formula">{formula}</span>}
                    <span className="quiet">{source}</span>
                  </dd>
                </div>
              ))}
            </dl>
          </section>
        ),
      )}
      {parts.every(({ words }) => words.length === 0) && <p>No word holds “{text}”.</p>}
    </Dialog>
  )
}
