import { Command, Help } from 'commander'
import { exitCodes } from './exitCodes.ts'
import type { Verb } from './verb.ts'

/** Fixed, so that help reads the same on every terminal and on the pages. */
const helpWidth = 92

/** Puts examples first and exit codes last. */
class ExampleFirst extends Help {
  examples: readonly string[] = []

  override formatHelp(command: Command, helper: Help): string {
    const examples = this.examples.map((example) => `  ${example}\n`).join('')
    const codes = Object.values(exitCodes).map(({ code, meaning }) => `  ${String(code).padEnd(3)} ${meaning}\n`)
    return `Example:\n${examples}\n${super.formatHelp(command, helper)}\nExit codes:\n${codes.join('')}`
  }
}

class HelpfulCommand extends Command {
  examples: readonly string[] = []

  override createHelp(): Help {
    return Object.assign(new ExampleFirst(), { helpWidth, examples: this.examples })
  }

  override createCommand(name?: string): Command {
    return new HelpfulCommand(name)
  }
}

interface ProgramOptions {
  readonly version: string
  readonly run: Parameters<Verb['define']>[1]
}

/** The whole command line, ready to parse. Problems are thrown as CommanderError; nothing ends the process. */
export function programOf(verbs: readonly Verb[], { version, run }: ProgramOptions): Command {
  const program = new HelpfulCommand('kufe')
  program.examples = ['kufe demo', 'kufe reduce drawer-b.csv --setup drawer.yaml --svg drawer-b.svg']
  program
    .description('From a raw record of a rotational rheometer to a friction curve that can be trusted.')
    .helpOption('-h, --help', 'show this text')
    .helpCommand('help [verb]', 'show the help of a verb')
    .version(version, '-V, --version', 'show the version')
    .exitOverride()
  for (const verb of verbs) {
    const command = new HelpfulCommand(verb.name)
    command.examples = verb.examples
    command
      .summary(verb.summary)
      .description(verb.description)
      .helpOption('-h, --help', 'show this text')
      .exitOverride()
    verb.define(command, run)
    program.addCommand(command)
  }
  return program
}
