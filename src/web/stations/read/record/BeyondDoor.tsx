import { lazy, type ReactNode, Suspense } from 'react'
import { go } from '../../../frame/address.ts'
import { Waiting } from '../../../frame/Waiting.tsx'

/** Most looks at a record end with its curve. */
const BeyondPart = lazy(() => import('./BeyondPart.tsx'))

/** Worked out when somebody asks, not with every look at the record; the address remembers that it is open. */
export function BeyondDoor({ record, open }: { readonly record: string; readonly open: boolean }): ReactNode {
  return (
    <section className="beyond" aria-labelledby="beyond">
      <h3 id="beyond">Beyond the curve</h3>
      <p>
        Starts, holds, up against down, stick–slip, wear and the turn, as far as this record tells them.{' '}
        <button
          type="button"
          aria-expanded={open}
          onClick={() => go({ search: { beyond: open ? null : 'open' } }, 'replace')}
        >
          {open ? 'Close it' : 'Look beyond the curve'}
        </button>
      </p>
      {open && (
        <Suspense fallback={<Waiting what="Looking beyond the curve" />}>
          <BeyondPart record={record} />
        </Suspense>
      )}
    </section>
  )
}
