import type { StopSignal } from '../core/terms/index.ts'

/** See `Desk.stopOnInterrupt`. */
export function stopOnInterrupt(): StopSignal {
  const asked = new AbortController()
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => asked.abort())
  return asked.signal
}
