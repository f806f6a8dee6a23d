/** A command as it stands in a block of the shell, and the exit code that the page promises. */
export interface Command {
  readonly text: string
  readonly exits: number
}

/** Commands of a block: one a line, lines that end in `\` joined; `# exits 3` after a command promises that code. */
export function commandsOf(block: string): Command[] {
  return block
    .replaceAll('\\\n', ' ')
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((text) => ({ text, exits: Number(/#\s*exits (\d+)/.exec(text)?.[1] ?? 0) }))
}

/** True when the page shows the output, line by line; a line `…` in the page stands for any number of lines. */
export function matchesOutput(output: string, shown: string): boolean {
  const want = shown.trimEnd().split('\n')
  const got = output
    .trimEnd()
    .split('\n')
    .map((line) => line.trimEnd())
  return matchesFrom(got, want)
}

function matchesFrom(got: readonly string[], want: readonly string[]): boolean {
  if (want.length === 0) return got.length === 0
  if (want[0].trim() !== '…')
    return got.length > 0 && got[0] === want[0].trimEnd() && matchesFrom(got.slice(1), want.slice(1))
  return Array.from({ length: got.length + 1 }, (_, left) => left).some((left) =>
    matchesFrom(got.slice(left), want.slice(1)),
  )
}
