import type { Point } from '../../core/terms/index.ts'
import { pointColumns } from './pointColumns.ts'
import { tableCsv } from './tableCsv.ts'
import { tableJson } from './tableJson.ts'
import { tableParquet } from './tableParquet.ts'

/** The points as CSV with a row of units. */
export const pointsCsv = (points: readonly Point[]): string => tableCsv(pointColumns, points)

/** The points as JSON: one object a point, SI, null for what is not known. */
export const pointsJson = (points: readonly Point[]): string => tableJson(pointColumns, points)

/** The points as Parquet; the unit of each column stands in the file's notes. */
export const pointsParquet = (points: readonly Point[]): Uint8Array => tableParquet(pointColumns, points)
