import { existsSync, readdirSync } from 'node:fs'
import { join, relative } from 'node:path'

/** All files in a folder of the project and below it, as sorted paths from `root` with forward slashes. */
export function filesUnder(root: string, folder: string): string[] {
  if (!existsSync(join(root, folder))) return []
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .sort()
}
