import type { Command } from 'commander'
import type { Shell } from '../completionScript.ts'
import { exitCodes } from '../exitCodes.ts'
import type { Desk, Verb } from '../verb.ts'

export const completionVerb: Verb = {
  name: 'completion',
  summary: 'let your shell complete verbs and options',
  description:
    'Prints a script that lets your shell complete verbs, options and file names. It knows the program as it is now.',
  examples: [
    'kufe completion bash > ~/.local/share/bash-completion/completions/kufe',
    'kufe completion zsh > ~/.zfunc/_kufe',
    'kufe completion fish > ~/.config/fish/completions/kufe.fish',
  ],
  define: (command, run) => {
    command
      .addArgument(command.createArgument('<shell>', 'which shell').choices(['bash', 'zsh', 'fish']))
      .action((shell: Shell) => run((desk) => completion(shell, command.parent?.commands ?? [], desk)))
  },
}

async function completion(shell: Shell, commands: readonly Command[], desk: Desk): Promise<number> {
  const { completionScript } = await import('../completionScript.ts')
  desk.screen.out(completionScript(shell, commands))
  return exitCodes.ok.code
}
