import type { ReactNode } from 'react'
import { spokenTime } from '../../../core/plan/index.ts'
import { printQuantity } from '../../../core/quantity/index.ts'
import type { JudgedAnswer, OrderedSheet, SheetCheck, SheetStepRow } from '../../../core/terms/index.ts'
import type { SheetHold } from './useSheet.ts'

/** The whole sheet for paper, two pages of it: boxes to write into, filled where there are answers. Not seen on a screen. */
export function PrintedSheet({ sheet, hold }: { readonly sheet: OrderedSheet; readonly hold: SheetHold }): ReactNode {
  return (
    <article className="printed-sheet" aria-hidden="true">
      <p className="printed-head">
        {sheet.subtitle}. About {spokenTime(sheet.totals.time)}. Sample ________ Replicate ____ Date ________ By ______
      </p>
      {sheet.foreword.map((text) => (
        <p key={text} className="printed-fore">
          {text}
        </p>
      ))}
      <div className="printed-columns">
        {sheet.parts.map((part) => (
          <section key={part.name}>
            <h3>{part.heading}</h3>
            {hold.entries
              .filter((one) => one.part.name === part.name)
              .map(({ entry, number }) => (
                <div key={entry.id} className="printed-step">
                  {entry.cautions.map((caution) => (
                    <p key={caution} className="caution">
                      <b>Caution.</b> {caution}
                    </p>
                  ))}
                  <p>
                    <b>
                      {hold.filled.ticked.includes(entry.id) ? '☑' : '☐'} {number}
                    </b>{' '}
                    {entry.text}
                  </p>
                  {entry.check !== null && <PrintedCheck check={entry.check} answer={hold.judged.get(entry.id)} />}
                </div>
              ))}
            {part.name === 'sweep' && <PrintedSweep steps={sheet.sweep} />}
          </section>
        ))}
      </div>
    </article>
  )
}

/** The steps in three columns: speed, rotation in rad/s, dwell. */
function PrintedSweep({ steps }: { readonly steps: readonly SheetStepRow[] }): ReactNode {
  return (
    <ol className="printed-sweep">
      {steps.map(({ step, slidingSpeed, angularVelocity, dwell }) => (
        <li key={step}>
          <b>{step}</b> {printQuantity(slidingSpeed, 'velocity', { digits: 3 })},{' '}
          {Number(angularVelocity.toPrecision(3))} rad/s, {printQuantity(dwell, 'time', { digits: 3, unit: 's' })}
        </li>
      ))}
    </ol>
  )
}

function PrintedCheck({
  check,
  answer,
}: {
  readonly check: SheetCheck
  readonly answer: JudgedAnswer | undefined
}): ReactNode {
  return (
    <p className="printed-check">
      <span className="printed-box">{boxText(check, answer)}</span> {check.read}: <b>{check.accept}</b>. Otherwise:{' '}
      {check.otherwise}
    </p>
  )
}

function boxText({ dimension }: SheetCheck, answer: JudgedAnswer | undefined): string {
  if (answer === undefined || answer.value === null) return ''
  const sign = answer.state === 'within' ? '✓' : '✗'
  if (typeof answer.value === 'boolean' || dimension === 'yes') return `${sign} ${answer.value === true ? 'yes' : 'no'}`
  return `${sign} ${printQuantity(answer.value, dimension, { digits: 4 })}`
}
