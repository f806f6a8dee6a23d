import { fixtureGeometry } from '../core/fixture/index.ts'
import { median } from '../core/numeric/index.ts'
import type { Channels } from '../core/terms/index.ts'
import type { ReportInput, ReportTexts } from '../report/index.ts'
import { contactPressure } from './contactPressure.ts'
import type { ReducedRecord } from './reducedRecord.ts'
import { reportBeyond } from './reportBeyond.ts'
import { reportFigures } from './reportFigures.ts'

/** All that the report of a reduced record is made from, its pictures drawn. `channels` are those that it was reduced from. */
export function reportInput(reduced: ReducedRecord, channels: Channels, texts: ReportTexts): ReportInput {
  const { setup, options, reduction, curve, remarks, budget, origin } = reduced
  const seen = reduction.points.map(({ axialForce }) => axialForce)
  const pressure = contactPressure(setup, setup.run.axialForce ?? (seen.length === 0 ? Number.NaN : median(seen)))
  const { findings, figures } = reportBeyond(reduced, channels)
  return {
    setup,
    options,
    reduction,
    curve,
    remarks,
    budget,
    geometry: fixtureGeometry(setup.fixture),
    pressure,
    record: { file: reduced.file, rows: reduced.read.rows },
    origin,
    figures: [...reportFigures(reduced, channels, pressure?.radius ?? null), ...figures],
    beyond: findings,
    texts,
  }
}
