import type { Place } from '../../core/terms/index.ts'
import type { Gathered } from '../setup/gathered.ts'

/** Values of a virtual run by path; what the key table calls required is there once no problem is left. */
export class RunValues {
  private readonly values: Gathered['values']

  constructor(gathered: Gathered) {
    this.values = gathered.values
  }

  /** Whether the key, or one below it, was given. */
  has(path: string): boolean {
    return [...this.values.keys()].some((key) => key === path || key.startsWith(`${path}.`))
  }

  place(path: string): Place {
    return this.values.get(path)?.place ?? {}
  }

  number(path: string, otherwise?: number): number {
    const value = this.values.get(path)?.value ?? otherwise
    if (typeof value !== 'number') throw new RangeError(`key ${path} must have been read as a number`)
    return value
  }

  text(path: string, otherwise?: string): string {
    const value = this.values.get(path)?.value ?? otherwise
    if (typeof value !== 'string') throw new RangeError(`key ${path} must have been read as text`)
    return value
  }

  /** undefined where the key was not given. */
  maybe(path: string): number | undefined {
    return this.has(path) ? this.number(path) : undefined
  }
}
