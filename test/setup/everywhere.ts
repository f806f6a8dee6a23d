import fc from 'fast-check'
import { afterEach } from 'vitest'

/** One seed for all property tests, so that a red run can be repeated. */
fc.configureGlobal({ seed: 20_261_125 })

/** What a test wrote to the console without catching it itself. */
const unexpected: string[] = []

for (const method of ['debug', 'error', 'info', 'log', 'trace', 'warn'] as const) {
  console[method] = (...words: unknown[]) => {
    unexpected.push(`console.${method}: ${words.map(String).join(' ')}`)
  }
}

afterEach(() => {
  const seen = unexpected.splice(0)
  if (seen.length > 0) throw new Error(`a test must be silent, but it wrote\n${seen.join('\n')}`)
})
