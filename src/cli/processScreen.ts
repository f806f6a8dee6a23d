import type { Screen } from './screen.ts'

type Environment = Readonly<Record<string, string | undefined>>

/** The screen of this process. NO_COLOR and TERM=dumb turn colours off, a locale without UTF-8 the wider signs. */
export function processScreen(): Screen {
  const { stdout, stderr, env } = process
  return {
    out: (text) => void stdout.write(text),
    err: (text) => void stderr.write(text),
    width: Math.max(40, stdout.columns ?? (Number.parseInt(env.COLUMNS ?? '', 10) || 80)),
    colour: stdout.isTTY === true && !env.NO_COLOR && env.TERM !== 'dumb',
    unicode: hasUnicode(env),
    terminal: stdout.isTTY === true,
    watched: stderr.isTTY === true && env.TERM !== 'dumb',
  }
}

/** POSIX: LC_ALL beats LC_CTYPE beats LANG. With none of them set only Windows, or a pipe, is left, and both take UTF-8. */
export function hasUnicode(env: Environment): boolean {
  if (env.TERM === 'linux') return false
  const locale = [env.LC_ALL, env.LC_CTYPE, env.LANG].find((value) => value !== undefined && value !== '')
  return locale === undefined || /utf-?8/i.test(locale)
}
