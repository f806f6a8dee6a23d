import type { ReactNode } from 'react'
import type { QuestionHold } from '../../question/useQuestion.ts'
import { Wording } from '../../sentence/Wording.tsx'

/** Commas part the names in the paper. */
const named = (text: string): string => text.replaceAll(',', ' ').replace(/\s+/g, ' ').trim()

/** The samples in the sentence, each to be renamed; one more with a button, one fewer while there are several. `tail` follows the last name at once. */
export function SampleNames({ hold, tail = '' }: { readonly hold: QuestionHold; readonly tail?: string }): ReactNode {
  const { samples } = hold.question.deciding
  const keep = (names: readonly string[]): void => hold.setText('deciding.samples', names.join(', '))
  const between = (index: number): string => (index === samples.length - 2 ? ' or ' : ', ')
  return (
    <>
      {samples.map((name, index) => (
        <span key={name}>
          <Wording
            name={`sample ${index + 1}`}
            value={name}
            assumed={hold.assumed('deciding.samples')}
            change={(text) => {
              const next = named(text)
              if (next !== '' && !samples.some((one, at) => at !== index && one === next)) {
                keep(samples.map((one, at) => (at === index ? next : one)))
              }
            }}
          />
          {index === samples.length - 1 ? tail : between(index)}
        </span>
      ))}
      <span className="inline-tools no-print">
        {' '}
        <button
          type="button"
          title="One more sample"
          aria-label="one more sample"
          onClick={() => keep([...samples, nextName(samples)])}
        >
          +
        </button>
        {samples.length > 1 && (
          <button
            type="button"
            title={`Leave ${samples[samples.length - 1]} out`}
            aria-label={`leave ${samples[samples.length - 1]} out`}
            onClick={() => keep(samples.slice(0, -1))}
          >
            −
          </button>
        )}
      </span>
    </>
  )
}

/** A, B, C … whichever is free. */
function nextName(samples: readonly string[]): string {
  const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ']
  return letters.find((letter) => !samples.includes(letter)) ?? `sample ${samples.length + 1}`
}
