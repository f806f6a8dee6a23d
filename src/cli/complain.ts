import { type Place, type Problem, schemaVersion } from '../core/terms/index.ts'
import { codeOf, exitCodes } from './exitCodes.ts'
import { painted, type Screen } from './screen.ts'
import type { Desk } from './verb.ts'

/** Was an answer for machines asked for? Also looked up where the command line itself could not be read. */
export const wantsJson = (words: readonly string[]): boolean => words.includes('--json')

/** Says all problems, each with what, where and mend, and answers the exit code. Machines get them on standard output as well. */
export function complain(problems: readonly Problem[], desk: Desk, json: boolean): number {
  const { screen } = desk
  const code = codeOf(problems)
  sayProblems(problems, screen)
  if (json) screen.out(`${JSON.stringify(errorDocument(code, problems), null, 2)}\n`)
  return code
}

/** Says problems to people, each with where, what and mend. */
export function sayProblems(problems: readonly Problem[], screen: Screen): void {
  const lines = problems.map((problem) => {
    const place = placeInWords(problem.place)
    const head = `${place === '' ? '' : `${place}: `}${problem.what}`
    return `${painted(screen, 'kufe:', 'warn')} ${head}\n      ${problem.mend}\n`
  })
  screen.err(lines.join(''))
}

/** The one shape of an error for machines; docs/json.md tells its fields. */
const errorDocument = (code: number, problems: readonly Problem[]): object => ({
  schemaVersion,
  error: { code, class: problems[0]?.class ?? 'fault', problems },
})

/** `drawer.yaml:7:12, fixture.balls, "tree"`: as much of it as is known. */
export function placeInWords({ file, line, column, name, cell }: Place): string {
  const spot = [file, line, column].filter((part) => part !== undefined).join(':')
  const inFile = file === undefined && line !== undefined ? `line ${spot}` : spot
  const quoted = cell === undefined ? undefined : `"${shortened(cell)}"`
  return [inFile, name, quoted].filter((part) => part !== undefined && part !== '').join(', ')
}

/** Cells come from foreign files: no control characters reach a terminal, and no more than a line of them. */
function shortened(cell: string): string {
  const printable = [...cell].map((letter) => (/[\p{C}\p{Zl}\p{Zp}]/u.test(letter) ? '·' : letter))
  return printable.length <= 40 ? printable.join('') : `${printable.slice(0, 39).join('')}…`
}

/** A mistake of ours: short, with how to report it; where it happened only for those who ask. */
export function fault(error: unknown, { screen, environment, outside }: Desk, json: boolean): number {
  const message = error instanceof Error ? error.message : String(error)
  screen.err(
    `${painted(screen, 'kufe:', 'warn')} This is a fault of ours, not of your data: ${message}\n` +
      `      Please report it with the command, the version (${outside.program}) and, if you may, the files.\n` +
      '      KUFE_DEBUG=1 shows where it happened.\n',
  )
  if (environment.KUFE_DEBUG && error instanceof Error) screen.err(`${error.stack ?? ''}\n`)
  const { code } = exitCodes.fault
  const problem = { kind: 'fault', class: 'fault', place: {}, what: message, mend: 'Report it.' }
  if (json)
    screen.out(`${JSON.stringify({ schemaVersion, error: { code, class: 'fault', problems: [problem] } }, null, 2)}\n`)
  return code
}
