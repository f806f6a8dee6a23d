import { holdColumns } from '../../bench/serve/index.ts'
import type { TaskDesk } from './taskTalk.ts'

/** What the threads can do, each in the words of its use case. */
export const tasks = {
  columns: ({ record }: { readonly record: string }, { call, outside }: TaskDesk) => holdColumns(record, call, outside),
} as const
