import type { ReactNode } from 'react'

interface ChoiceProps<V extends string> {
  readonly name: string
  readonly value: V
  readonly options: readonly { readonly value: V; readonly words: string }[]
  readonly assumed?: boolean
  readonly change: (value: V) => void
}

/** One of a few words in a sentence. */
export const Choice = <V extends string>({ name, value, options, assumed, change }: ChoiceProps<V>): ReactNode => (
  <select
    className={assumed === true ? 'choice assumed' : 'choice'}
    aria-label={name}
    title={name}
    value={value}
    onChange={(event) => {
      const found = options.find((option) => option.value === event.target.value)
      if (found !== undefined) change(found.value)
    }}
  >
    {options.map((option) => (
      <option key={option.value} value={option.value}>
        {option.words}
      </option>
    ))}
  </select>
)
