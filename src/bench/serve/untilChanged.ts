import type { Outcome } from '../../core/terms/index.ts'
import type { LabPulse } from './labPulse.ts'

/** Answers that are remembered at once; a page asks for few, and again at each change. */
const most = 50

/** Remembers what was worked out from the lab until something in it changes, whoever changed it. */
export class UntilChanged {
  readonly #pulse: LabPulse
  readonly #known = new Map<string, Promise<Outcome<unknown>>>()
  #at = -1

  constructor(pulse: LabPulse) {
    this.#pulse = pulse
  }

  async get<T>(key: string, make: () => Promise<Outcome<T>>): Promise<Outcome<T>> {
    const beat = await this.#pulse.beat()
    if (!beat.ok) return beat
    if (this.#at !== this.#pulse.last) this.#known.clear()
    this.#at = this.#pulse.last
    const known = this.#known.get(key) as Promise<Outcome<T>> | undefined // a key is used for one kind of answer alone
    if (known !== undefined) return known
    if (this.#known.size >= most) this.#known.clear()
    const made = make()
    this.#known.set(key, made)
    const forget = (): void => void this.#known.delete(key)
    made.then(({ ok }) => (ok ? undefined : forget()), forget)
    return made
  }
}
