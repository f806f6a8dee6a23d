import type { Migration } from './migration.ts'
import { version1 } from './version1.ts'
import { version2 } from './version2.ts'

/** All steps of the schema, oldest first. */
export const migrations: readonly Migration[] = [version1, version2]
