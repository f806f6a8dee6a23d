import { createHash } from 'node:crypto'
import type { Replicate, ReplicateBlocks, ReplicatePoint } from '../../core/decide/index.ts'
import type { Point, SharedSource } from '../../core/terms/index.ts'
import type { ReducedRecord } from '../reducedRecord.ts'

/** What is said of a record beside its points. */
export interface ReplicateFacts {
  readonly record: string
  readonly name: string
  readonly sample: string
  readonly blocks: ReplicateBlocks
}

/** A reduced record as a replicate: its trusted points, and which rig and fixture it shares with others. */
export function replicateOf(
  { reduction, setup }: Pick<ReducedRecord, 'reduction' | 'setup'>,
  facts: ReplicateFacts,
): Replicate {
  return {
    ...facts,
    points: replicatePoints(reduction.points),
    window: { low: reduction.window.low, high: reduction.window.high },
    rig: markOf(setup.rig),
    fixture: markOf(setup.fixture),
  }
}

/** Points that may carry a comparison: trusted, at a speed, with a friction above zero. */
export const replicatePoints = (points: readonly Point[]): ReplicatePoint[] =>
  points.flatMap(({ trusted, slidingSpeed, friction, ownUncertainty, shared }) =>
    trusted && slidingSpeed > 0 && friction !== null && friction > 0
      ? [{ slidingSpeed, friction, own: ownUncertainty ?? 0, shared: shares(shared, friction) }]
      : [],
  )

const shares = (shared: Point['shared'], friction: number): Partial<Record<SharedSource, number>> =>
  Object.fromEntries(Object.entries(shared).map(([source, value]) => [source, value / friction]))

/** Equal for equal things, whatever order their keys stand in. */
const markOf = (thing: object): string => createHash('sha256').update(inOrder(thing)).digest('hex').slice(0, 16)

const inOrder = (thing: object): string =>
  JSON.stringify(
    Object.entries(thing).sort(([a], [b]) => (a < b ? -1 : 1)),
    (_, value: unknown) =>
      typeof value === 'object' && value !== null && !Array.isArray(value)
        ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
        : value,
  )
