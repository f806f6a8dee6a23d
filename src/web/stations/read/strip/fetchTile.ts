import type { TraceAnswer } from '../../../../server/contract/index.ts'
import { request } from '../../../api/request.ts'
import type { FetchTile } from './envelopes.ts'
import { tileColumns } from './tile.ts'
import { tileFrom } from './tileFrom.ts'

/** Tiles of a record that the server keeps. */
export const tilesOf =
  (record: string): FetchTile =>
  async ({ from, to }, signal) => {
    const place = `from=${from}&to=${to}&pixels=${tileColumns}`
    return tileFrom(await request<TraceAnswer>(`/api/records/${record}/trace?${place}`, { signal }))
  }
