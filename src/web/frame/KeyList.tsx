import { type ReactNode, useState } from 'react'
import { keysNow, lettersOn, setLetters } from '../work/keys.ts'
import { Dialog } from './Dialog.tsx'

const shown: Readonly<Record<string, string>> = {
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  Escape: 'Esc',
}

const spoken = (key: string): string =>
  key
    .split('+')
    .map((part) => shown[part] ?? part)
    .join(' + ')

/** All keys that work here and now. */
export default function KeyList({ close }: { readonly close: () => void }): ReactNode {
  const [on, setOn] = useState(lettersOn)
  const [groups] = useState(keysNow)
  const turn = (): void => {
    setLetters(!on)
    setOn(!on)
  }
  return (
    <Dialog title="Keys" close={close}>
      {groups.map(({ where, keys }) => (
        <section key={where}>
          <h3>{where}</h3>
          <dl className="keys">
            {keys.map(({ key, words }) => (
              <div key={key}>
                <dt>
                  <kbd>{spoken(key)}</kbd>
                </dt>
                <dd>{words}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
      <h3>On a quantity</h3>
      <dl className="keys">
        <div>
          <dt>
            <kbd>Enter</kbd>
          </dt>
          <dd>edit, and keep what was typed; Esc leaves it as it was</dd>
        </div>
        <div>
          <dt>
            <kbd>↑</kbd> <kbd>↓</kbd>
          </dt>
          <dd>one step more or less; with Shift ten</dd>
        </div>
        <div>
          <dt>drag</dt>
          <dd>sideways changes it smoothly</dd>
        </div>
      </dl>
      <p>
        <label>
          <input type="checkbox" checked={on} onChange={turn} /> single letters and digits work as keys
        </label>
      </p>
    </Dialog>
  )
}
