import { setImmediate } from 'node:timers/promises'
import { done, failed, type Outcome, type Place } from '../core/terms/index.ts'
import { StoreTrouble } from './storeProblem.ts'
import { problemOfSystem } from './systemWords.ts'

/** What `act` gives, or the problems it ran into. Mistakes of our own are thrown on. */
export async function attempt<T>(place: Place, act: () => Promise<T>): Promise<Outcome<T>> {
  await setImmediate() // SQLite answers at once: without this, a loop of calls would let nothing else have a turn
  try {
    return done(await act())
  } catch (error) {
    if (error instanceof StoreTrouble) return failed(...error.problems)
    const problem = problemOfSystem(error, place)
    if (problem === undefined) throw error
    return failed(problem)
  }
}
