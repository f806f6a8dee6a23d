import type { RemarkWeight } from '../../core/terms/index.ts'

/** What stands before a remark: its weight without colour. */
export const weightSigns: Readonly<Record<RemarkWeight, string>> = { stops: '!', caution: '~', note: '-' }
