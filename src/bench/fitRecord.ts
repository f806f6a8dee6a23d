import { fitCurve } from '../core/curve/index.ts'
import type { Outside } from '../core/terms/index.ts'
import { curvePoints } from './curvePoints.ts'
import type { ReducedRecord } from './reducedRecord.ts'

/** Adds the curve to a reduced record: fitted through its trusted points, with the draws and the seed of its options. */
export function fitRecord(reduced: ReducedRecord, outside: Outside): ReducedRecord {
  const { options, reduction } = reduced
  outside.progress('fit', 0, 1)
  const curve = fitCurve(curvePoints(reduction.points), { draws: options.bandDraws, seed: options.seed })
  outside.progress('fit', 1, 1)
  return { ...reduced, curve, remarks: [...reduced.remarks, ...curve.remarks] }
}
