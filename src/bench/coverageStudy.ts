import { Worker } from 'node:worker_threads'
import type { Outside } from '../core/terms/index.ts'
import { type CoverageKindName, coverageKind } from './coverageKinds.ts'
import type { CoverageMark } from './coverRun.ts'

/** How often intervals of one kind hold the truth. */
export interface CoverageRow {
  readonly group: string
  readonly inside: number
  readonly of: number
  /** Where there was a truth but no interval with two ends was given. */
  readonly notGiven: number
  readonly share: number
  /** Binomial standard error of `share`, as if all intervals were independent. */
  readonly standardError: number
}

export interface CoverageStudy {
  readonly of: CoverageKindName
  readonly seed: number
  /** How many draws; records, where the study is not of curves. */
  readonly curves: number
  readonly rows: readonly CoverageRow[]
}

export interface CoverageArgs {
  /** Curves where nothing is said. */
  readonly of?: CoverageKindName
  readonly seed: number
  readonly curves: number
  readonly workers: number
}

/** Nominal 95 % intervals count as honest between these shares. */
const honestCoverage = { low: 0.93, high: 0.97 } as const

/** Whether a share lies between 93 and 97 %, as far as its own standard error lets one tell. */
export const isHonest = ({ share, standardError, of }: CoverageRow): boolean =>
  of === 0 || (share + standardError >= honestCoverage.low && share - standardError <= honestCoverage.high)

/** Simulates and evaluates `curves` drawn runs and counts which intervals hold the truth. Same seed, same table. */
export async function coverageStudy(args: CoverageArgs, outside: Outside): Promise<CoverageStudy> {
  const of = args.of ?? 'curves'
  let done = 0
  const shares = Array.from({ length: Math.max(1, Math.min(args.workers, args.curves)) }, (_, i) => i)
  const parts = await Promise.all(
    shares.map((worker) =>
      marksOf({ of, seed: args.seed, first: worker, step: shares.length, curves: args.curves }, () => {
        done++
        outside.progress(of === 'curves' ? 'curves' : 'records', done, args.curves)
      }),
    ),
  )
  const marks = parts.flat()
  const rows = coverageKind(of).groups.map((group) => rowOf(group, marks))
  return { of, seed: args.seed, curves: args.curves, rows }
}

/** What a worker is asked for: runs `first`, `first + step` … below `curves`. */
export interface CoverageShare {
  readonly of: CoverageKindName
  readonly seed: number
  readonly first: number
  readonly step: number
  readonly curves: number
}

function marksOf(share: CoverageShare, onRun: () => void): Promise<CoverageMark[]> {
  return new Promise((resolve, reject) => {
    const marks: CoverageMark[] = []
    const worker = new Worker(new URL('./coverageWorker.ts', import.meta.url), { workerData: share })
    worker.on('message', (more: CoverageMark[]) => {
      marks.push(...more)
      onRun()
    })
    worker.on('error', reject)
    worker.on('exit', () => resolve(marks))
  })
}

function rowOf(group: string, marks: readonly CoverageMark[]): CoverageRow {
  const own = marks.filter((mark) => mark.group === group)
  const given = own.filter((mark) => mark.inside !== null)
  const inside = given.filter((mark) => mark.inside).length
  const share = inside / given.length
  return {
    group,
    inside,
    of: given.length,
    notGiven: own.length - given.length,
    share,
    standardError: Math.sqrt((share * (1 - share)) / given.length),
  }
}
