import type { ReactNode } from 'react'
import type { LabView } from '../../api/study.ts'
import { setWriter, useWriter } from '../../api/writer.ts'

/** Who stands in the history, and who writes now. */
export function PeoplePart({ lab }: { readonly lab: LabView }): ReactNode {
  const now = useWriter()
  return (
    <>
      <p>
        <label>
          Changes are kept under{' '}
          <input value={now} maxLength={80} size={8} onChange={(event) => setWriter(event.target.value)} />
        </label>
      </p>
      <ul className="drawer-list">
        {lab.people.map((initials) => (
          <li key={initials}>
            <b>{initials}</b>{' '}
            {initials !== now && (
              <button type="button" onClick={() => setWriter(initials)}>
                That is me
              </button>
            )}
          </li>
        ))}
      </ul>
    </>
  )
}
