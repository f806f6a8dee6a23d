import { done, failed, type Outcome } from '../../core/terms/index.ts'
import { ArchiveDamaged, ArchiveTooLarge, pack, unpack } from '../table/zipArchive.ts'
import type { PackageFile } from './packageFile.ts'
import { packageProblem } from './packageProblem.ts'
import type { PackageSource } from './packageSource.ts'

/** Most that a zip may unpack to, bytes; a larger package is given as a folder. */
const largest = 2 ** 31

/** The files of a package as one zip. Equal files give equal bytes. Throws RangeError for more than two gibibytes. */
export async function zipPackage(files: AsyncIterable<PackageFile>): Promise<Uint8Array> {
  const together = new Map<string, Uint8Array>()
  let size = 0
  for await (const { path, bytes } of files) {
    size += bytes.length
    if (size > largest) throw new RangeError(`a zip holds at most ${largest} bytes: write the package as a folder`)
    together.set(path, bytes)
  }
  return pack(together)
}

/** A package that came as a zip. A folder round all of it, as many tools make one, is looked through. */
export function zipSource(bytes: Uint8Array, name: string): Outcome<PackageSource> {
  try {
    const files = unpack(bytes, () => true, largest)
    const [first] = [...files.keys()].filter((path) => path.split('/').pop() === 'datapackage.json').sort(byLength)
    const prefix = first === undefined ? '' : first.slice(0, -'datapackage.json'.length)
    return done({ name, read: async (path) => files.get(prefix + path) })
  } catch (error) {
    if (error instanceof ArchiveTooLarge) {
      return failed(packageProblem('packageUnreadable', { file: name }, 'it unpacks to more than two gibibytes'))
    }
    if (error instanceof ArchiveDamaged || error instanceof RangeError) {
      return failed(packageProblem('packageUnreadable', { file: name }, `the zip is damaged, ${error.message}`))
    }
    throw error
  }
}

const byLength = (a: string, b: string): number => a.length - b.length
