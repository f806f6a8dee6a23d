/** Why a row was left out. */
export type DamageKind = 'notANumber' | 'tooFewCells' | 'tooManyCells' | 'noTime'

/** One row that was left out; line and column count from 1. */
export interface Damage {
  readonly kind: DamageKind
  readonly line: number
  readonly column: number
  readonly cell: string
}

/** Damaged rows: all are counted, the first few kept. */
export class DamageList {
  readonly first: Damage[] = []
  count = 0
  readonly #keep: number

  constructor(keep: number) {
    this.#keep = keep
  }

  add(damage: Damage): void {
    this.count++
    if (this.first.length < this.#keep) this.first.push(damage)
  }
}
