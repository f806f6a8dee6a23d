import type { Command, Option } from 'commander'

/** Shells for which there is a script. */
const shells = ['bash', 'zsh', 'fish'] as const

export type Shell = (typeof shells)[number]

/** A script for a shell, made from the options as they are defined. After a verb, files are completed where no option is begun. */
export function completionScript(shell: Shell, commands: readonly Command[]): string {
  switch (shell) {
    case 'bash':
      return bash(commands)
    case 'zsh':
      return zsh(commands)
    case 'fish':
      return fish(commands)
  }
}

const optionsOf = (command: Command): readonly Option[] => command.createHelp().visibleOptions(command)
const longOf = (option: Option): string => option.long ?? option.short ?? ''
const choicesOf = (command: Command): readonly string[] =>
  command.registeredArguments.flatMap((one) => one.argChoices ?? [])

function bash(commands: readonly Command[]): string {
  const cases = commands.map((command) => {
    const words = [...optionsOf(command).map(longOf), ...choicesOf(command)].join(' ')
    return `    ${command.name()}) words="${words}" ;;`
  })
  const choices = commands
    .flatMap(optionsOf)
    .filter((option) => option.argChoices !== undefined)
    .map(
      (option) =>
        `    ${longOf(option)}) COMPREPLY=($(compgen -W "${option.argChoices?.join(' ')}" -- "$word")); return ;;`,
    )
  return `# Completion of kufe for bash.
_kufe() {
  local word="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD - 1]}" words
  if [ "$COMP_CWORD" -eq 1 ]; then
    COMPREPLY=($(compgen -W "${commands.map((command) => command.name()).join(' ')} help --help --version" -- "$word"))
    return
  fi
  case "$before" in
${[...new Set(choices)].join('\n')}
  esac
  case "\${COMP_WORDS[1]}" in
${cases.join('\n')}
    *) words="" ;;
  esac
  COMPREPLY=($(compgen -W "$words" -- "$word"))
  case "$word" in -*) ;; *) COMPREPLY+=($(compgen -f -- "$word")) ;; esac
}
complete -o filenames -F _kufe kufe
`
}

function zsh(commands: readonly Command[]): string {
  const verbs = commands.map((command) => `    ${quoted(`${command.name()}:${command.summary()}`)}`)
  const cases = commands.map((command) => {
    const options = optionsOf(command).map((option) => `      ${quoted(zshOption(option))}`)
    const choices = choicesOf(command)
    const rest = choices.length > 0 ? `'1:choice:(${choices.join(' ')})'` : "'*:file:_files'"
    return `    ${command.name()}) _arguments \\\n${[...options, `      ${rest}`].join(' \\\n')} ;;`
  })
  return `#compdef kufe
# Completion of kufe for zsh.
_kufe() {
  local -a verbs
  verbs=(
${verbs.join('\n')}
  )
  if (( CURRENT == 2 )); then
    _describe 'verb' verbs
    return
  fi
  local verb=$words[2]
  shift words
  (( CURRENT-- ))
  case $verb in
${cases.join('\n')}
  esac
}
_kufe "$@"
`
}

function zshOption(option: Option): string {
  const about = option.description.replace(/[[\]]/g, '').replaceAll(':', '\\:')
  const value =
    option.argChoices !== undefined ? `:value:(${option.argChoices.join(' ')})` : option.required ? ':value:_files' : ''
  return `${longOf(option)}[${about}]${value}`
}

function fish(commands: readonly Command[]): string {
  const verbs = commands.map(
    (command) => `complete -c kufe -n __fish_use_subcommand -f -a ${command.name()} -d ${quoted(command.summary())}`,
  )
  const options = commands.flatMap((command) =>
    optionsOf(command).map((option) => {
      const value =
        option.argChoices !== undefined ? ` -x -a ${quoted(option.argChoices.join(' '))}` : option.required ? ' -r' : ''
      return `complete -c kufe -n ${quoted(`__fish_seen_subcommand_from ${command.name()}`)} -l ${longOf(option).slice(2)}${value} -d ${quoted(option.description)}`
    }),
  )
  return `# Completion of kufe for fish.\n${[...verbs, ...options].join('\n')}\n`
}

const quoted = (text: string): string => `'${text.replaceAll("'", "'\\''")}'`
