import assert from 'node:assert/strict'
import type { Outcome } from '../../src/core/terms/index.ts'
import { type Lab, type Opening, openLab } from '../../src/store/index.ts'
import { inventedBytes, inventedResult } from '../storeChild.ts'
import type { Heard } from './child.ts'

/** Who looks after each kill. */
export const opening: Opening = {
  change: { at: '2026-11-25T10:00:00.000Z', who: 'Bo', why: 'looking after a kill' },
  program: 'kufe 0.1.0',
}

/** An instant after which nothing was written. */
export const never = '2100-01-01T00:00:00Z'

/** The value, or an error with all that stood in its way. */
export function value<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value
  throw new Error(
    outcome.problems.map(({ kind, what, place }) => `${kind}: ${what} ${JSON.stringify(place)}`).join('\n'),
  )
}

/** Kinds of the problems. */
export const kinds = (outcome: Outcome<unknown>): string[] =>
  outcome.ok ? [] : outcome.problems.map(({ kind }) => kind)

/** Opens a lab as the next start of the program would, and closes it. */
export async function inLab<T>(where: string, more: Partial<Opening>, look: (lab: Lab) => Promise<T>): Promise<T> {
  await using lab = value(await openLab(where, { ...opening, ...more }))
  return await look(lab)
}

/** What all labs must be after a kill: nothing damaged, the history without a gap, each record whole and the one that was made. */
export async function soundRecords(lab: Lab, from: number): Promise<string[]> {
  assert.deepEqual(value(await lab.check()).problems, [])
  const numbers: number[] = []
  for (let page = value(await lab.history.list()); page.length > 0; ) {
    numbers.push(...page.map(({ change }) => change.number))
    page = value(await lab.history.list({ after: numbers.at(-1) }))
  }
  assert.deepEqual(
    numbers,
    numbers.map((_, i) => i + 1),
  )
  const records = value(await lab.records.list())
  for (const { id, name } of records.filter((record) => Number.parseInt(record.name, 10) >= from)) {
    const kept = value(await lab.records.bytes(id))
    assert.ok(Buffer.compare(kept, inventedBytes(Number.parseInt(name, 10))) === 0, `bytes of ${name}`)
  }
  return records.map(({ id }) => id)
}

/** All that a child acknowledged must be there, and no more than one batch that it could not acknowledge any more. */
export async function keptItsWord(lab: Lab, { kept }: Heard, ids: readonly string[]): Promise<void> {
  const there = new Set(ids)
  const results = new Set(value(await lab.results.list()).map(({ id }) => id))
  for (const word of kept) {
    const [what, id] = word.split(' ')
    if (what === 'record') assert.ok(there.has(id), `${word} was acknowledged and is not there`)
    if (what === 'result') {
      assert.ok(results.has(id), `${word} was acknowledged and is not there`)
      assert.match(value(await lab.results.text(id)), /^\{"record":\d+,/)
    }
    if (what === 'correction') assert.equal(value(await lab.records.get(id)).version, 2)
  }
}

/** Every result is the one that was made for its record. */
export async function rightResults(lab: Lab): Promise<void> {
  const names = new Map(value(await lab.records.list()).map(({ id, name }) => [id, Number.parseInt(name, 10)]))
  for (const { id, origin } of value(await lab.results.list())) {
    assert.equal(value(await lab.results.text(id)), inventedResult(names.get(origin.raw) ?? -1))
  }
}
