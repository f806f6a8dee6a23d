import type { ReactNode } from 'react'
import { fromSi, printQuantity, readableUnit } from '../../../core/quantity/index.ts'
import type { SheetStepRow } from '../../../core/terms/index.ts'

/** The steps of the sweep, with one unit of speed for all. */
export function SweepTable({ steps }: { readonly steps: readonly SheetStepRow[] }): ReactNode {
  const speeds = steps.map(({ slidingSpeed }) => slidingSpeed)
  const unit = readableUnit(Math.sqrt(Math.min(...speeds) * Math.max(...speeds)), 'velocity')
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls must be reachable by keyboard
    <section className="sweep-table" tabIndex={0} aria-label="Steps of the sweep">
      <table>
        <caption className="unseen">Steps of the sweep</caption>
        <thead>
          <tr>
            <th scope="col">step</th>
            <th scope="col">speed ({unit.text})</th>
            <th scope="col">rotation (rad/s)</th>
            <th scope="col">dwell (s)</th>
            <th scope="col">turns</th>
          </tr>
        </thead>
        <tbody>
          {steps.map(({ step, slidingSpeed, angularVelocity, dwell, turns }) => (
            <tr key={step}>
              <td>{step}</td>
              <td>{Number(fromSi(slidingSpeed, unit).toPrecision(3))}</td>
              <td>{Number(angularVelocity.toPrecision(3))}</td>
              <td>{printQuantity(dwell, 'time', { digits: 3, unit: 's' }).replace(/\s*s$/, '')}</td>
              <td>{turns.toFixed(2)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
