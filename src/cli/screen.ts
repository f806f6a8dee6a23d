/** Where a verb writes to. Tests hand in one that remembers. */
export interface Screen {
  /** Standard output: the answer. */
  readonly out: (text: string) => void
  /** Standard error: problems and progress. */
  readonly err: (text: string) => void
  /** Columns of the terminal; 80 where there is none. */
  readonly width: number
  /** May colours be used? They never carry a meaning alone. */
  readonly colour: boolean
  /** Can it show more than ASCII? */
  readonly unicode: boolean
  /** Does standard output go to a terminal, where somebody sits? */
  readonly terminal?: boolean
  /** Is somebody watching standard error, so that progress makes sense? */
  readonly watched: boolean
}

/** Accent of the house: spruce green; and quiet, strong. Plain text where colours are off. */
export const painted = (screen: Screen, text: string, how: 'accent' | 'quiet' | 'strong' | 'warn'): string => {
  if (!screen.colour) return text
  const code = { accent: '38;5;29', quiet: '2', strong: '1', warn: '38;5;166' }[how]
  return `\u001b[${code}m${text}\u001b[0m`
}
