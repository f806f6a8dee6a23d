import type { Screen } from '../../src/cli/screen.ts'
import type { Desk } from '../../src/cli/verb.ts'

/** A desk that remembers what was said, and knows nothing of the process that runs the tests. */
export interface CapturedDesk extends Desk {
  readonly out: () => string
  readonly err: () => string
}

export function capturedDesk(screen: Partial<Screen> = {}, environment: Desk['environment'] = {}): CapturedDesk {
  const out: string[] = []
  const err: string[] = []
  return {
    screen: {
      out: (text) => void out.push(text),
      err: (text) => void err.push(text),
      width: 100,
      colour: false,
      unicode: true,
      watched: false,
      ...screen,
    },
    outside: {
      now: () => new Date('2026-01-02T03:04:05Z'),
      progress: () => {},
      stop: { aborted: false },
      program: 'kufe 0.0.0-test',
    },
    environment,
    stopOnInterrupt: () => ({ aborted: true }),
    out: () => out.join(''),
    err: () => err.join(''),
  }
}
