import { type ReactNode, useRef } from 'react'
import type { SetupStand } from './setupChoice.ts'

interface SetupTextProps {
  readonly text: string
  readonly stand: SetupStand
  readonly change: (text: string) => void
}

/** A setup as text with numbered lines; each problem stands beside the line that it is about, and leads there. */
export function SetupText({ text, stand, change }: SetupTextProps): ReactNode {
  const field = useRef<HTMLTextAreaElement>(null)
  const numbers = useRef<HTMLDivElement>(null)
  const problems = stand.state === 'refused' ? (stand.problem.problems ?? []) : []
  const bad = new Set(problems.map(({ place }) => place.line))
  const lines = text.split('\n')
  const goTo = (line: number): void => {
    const area = field.current
    if (area === null) return
    const begin = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0)
    area.focus()
    area.setSelectionRange(begin, begin + (lines[line - 1]?.length ?? 0))
  }
  return (
    <div className="setup-text">
      <div className="numbered">
        <div ref={numbers} className="numbers" aria-hidden="true">
          {lines.map((_, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a line is its number
            <div key={index} className={bad.has(index + 1) ? 'bad-line' : ''}>
              {index + 1}
            </div>
          ))}
        </div>
        <textarea
          ref={field}
          aria-label="Setup as text"
          aria-invalid={problems.length > 0}
          aria-describedby={problems.length > 0 ? 'setup-problems' : undefined}
          value={text}
          rows={Math.min(28, Math.max(10, lines.length + 1))}
          spellCheck={false}
          wrap="off"
          onChange={(event) => change(event.target.value)}
          onScroll={(event) => {
            if (numbers.current !== null) numbers.current.scrollTop = event.currentTarget.scrollTop
          }}
        />
      </div>
      {problems.length > 0 && (
        <ul id="setup-problems" className="refused" aria-label="What is to be mended">
          {problems.map(({ what, mend, place }) => (
            <li key={`${place.line} ${place.name} ${what}`}>
              {place.line !== undefined && (
                <button type="button" onClick={() => goTo(place.line ?? 1)}>
                  Line {place.line}
                </button>
              )}{' '}
              {what} <em>{mend}</em>
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}
