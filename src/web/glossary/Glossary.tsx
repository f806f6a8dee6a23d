import type { ReactNode } from 'react'
import { go } from '../frame/address.ts'
import { Dialog } from '../frame/Dialog.tsx'
import { words } from './words.ts'

/** What the words mean, with formula and source; opened at one of them. */
export default function Glossary({ word }: { readonly word: string }): ReactNode {
  const close = (): void => go({ search: { word: null } })
  return (
    <Dialog title="What the words mean" close={close} aside>
      <dl className="glossary">
        {words.map(({ key, name, meaning, formula, source }) => (
          <div key={key} id={`word-${key}`} aria-current={key === word}>
            <dt>{name}</dt>
            <dd>
              {meaning}
              {formula !== undefined && <span className="formula">{formula}</span>}
              <span className="quiet">{source}</span>
            </dd>
          </div>
        ))}
      </dl>
    </Dialog>
  )
}
