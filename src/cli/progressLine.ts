import type { Progress } from '../core/terms/index.ts'
import type { Screen } from './screen.ts'

/** Milliseconds before progress is worth a line, and between two lines. */
const patience = 1000
const pace = 100

/**
 * Progress on standard error: one line that rewrites itself, only where somebody watches and only after a second.
 * `now` gives milliseconds.
 */
export function progressLine(screen: Screen, now: () => number): Progress {
  const start = now()
  let last = Number.NEGATIVE_INFINITY
  let shown = false
  return (what, done, of) => {
    if (!screen.watched) return
    const time = now()
    const finished = done >= of
    if (finished && shown) {
      screen.err('\r\u001b[K')
      shown = false
    }
    if (finished || time - start < patience || time - last < pace) return
    last = time
    shown = true
    screen.err(`\r\u001b[K${what} ${of > 0 ? Math.floor((100 * done) / of) : 0} %`)
  }
}
