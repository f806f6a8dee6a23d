import { CommanderError } from 'commander'
import { complain, fault, wantsJson } from './complain.ts'
import { exitCodes } from './exitCodes.ts'
import { programOf } from './program.ts'
import type { Desk, Verb } from './verb.ts'
import { verbsFor } from './verbsFor.ts'

/**
 * Runs one command line and answers the exit code. Nothing here ends the process, so that tests call it as it is.
 * What a person did wrong comes back as problems; whatever is thrown is a fault of ours.
 */
export async function run(words: readonly string[], desk: Desk): Promise<number> {
  const { screen } = desk
  let work: ((desk: Desk) => Promise<number>) | undefined
  const choose = (chosen: (desk: Desk) => Promise<number>): void => {
    work = chosen
  }
  const verbs = await verbsFor(words)
  const program = programOf(verbs, { version: desk.outside.program, run: choose })
  const said: string[] = []
  for (const command of [program, ...program.commands]) {
    command.configureOutput({ writeOut: screen.out, writeErr: (text) => void said.push(text) })
  }
  try {
    program.parse([...words], { from: 'user' })
    return work === undefined ? exitCodes.ok.code : await work(desk)
  } catch (error) {
    if (!(error instanceof CommanderError)) return fault(error, desk, wantsJson(words))
    if (error.exitCode === 0) return exitCodes.ok.code
    return wrongUse(said.join(''), { words, verbs, desk })
  }
}

/** Words that the command line could not make sense of; the help itself where nothing was asked for. */
function wrongUse(
  said: string,
  { words, verbs, desk }: { readonly words: readonly string[]; readonly verbs: readonly Verb[]; readonly desk: Desk },
): number {
  if (words.length === 0) {
    desk.screen.err(said)
    return exitCodes.wrongUse.code
  }
  const what = said
    .replace(/^error: /, '')
    .replace(/\n\(Did you mean .*\)\n?$/s, '')
    .trim()
  const nearest = said.match(/\(Did you mean (.*?)\?\)/)?.[1]
  const verb = words.find((word) => !word.startsWith('-'))
  const known = verb !== undefined && verbs.some(({ name }) => name === verb)
  const mend =
    nearest === undefined
      ? `Ask "kufe ${known ? `${verb} ` : ''}--help" for what it takes.`
      : `Did you mean ${nearest}?`
  return complain([{ kind: 'wrongUse', class: 'wrongUse', place: {}, what, mend }], desk, wantsJson(words))
}
