import type { Command } from 'commander'
import type { Outside, StopSignal } from '../core/terms/index.ts'
import type { Screen } from './screen.ts'

/** What a verb gets to work with. */
export interface Desk {
  readonly screen: Screen
  readonly outside: Outside
  readonly environment: Readonly<Record<string, string | undefined>>
  /** From this call on, Ctrl+C asks to stop instead of ending the process; a second one ends it. For verbs that run until then. */
  readonly stopOnInterrupt: () => StopSignal
}

/** One verb of the program. `define` is light and runs for every help text; the work is imported when it is done. */
export interface Verb {
  readonly name: string
  /** For the list of verbs, a few words. */
  readonly summary: string
  /** What it does, for its own help. */
  readonly description: string
  /** Commands that show its use, the plainest first. */
  readonly examples: readonly string[]
  /** Sets arguments, options and what to do; `run` answers the exit code. */
  readonly define: (command: Command, run: (work: (desk: Desk) => Promise<number>) => void) => void
}
