import { mkdir, open, readFile, realpath, rename, rm, stat } from 'node:fs/promises'
import { basename, dirname, join, sep } from 'node:path'
import { done, failed, type Outcome } from '../../core/terms/index.ts'
import { isSafePath } from './fileNames.ts'
import type { PackageFile } from './packageFile.ts'
import { packageProblem } from './packageProblem.ts'
import type { PackageSource } from './packageSource.ts'

/**
 * Writes the files of a package into a new folder: beside it first, then renamed, so that the folder is there wholly or not at
 * all. Every file is on the disk when this is done. Refuses a folder that is there already.
 */
export async function writePackageFolder(
  files: AsyncIterable<PackageFile>,
  folder: string,
): Promise<Outcome<{ readonly files: number; readonly bytes: number }>> {
  const place = { file: folder }
  if (await isThere(folder)) return failed(packageProblem('packageExists', place))
  const unfinished = join(dirname(folder), `.${basename(folder)}.${process.pid}.part`)
  try {
    await mkdir(unfinished, { recursive: true })
    const written = { files: 0, bytes: 0 }
    for await (const file of files) {
      await writeFileWhole(join(unfinished, inFolder(file.path)), file.bytes)
      written.files += 1
      written.bytes += file.bytes.length
    }
    await rename(unfinished, folder)
    return done(written)
  } catch (error) {
    // What cannot be there cannot be cleared away; the first error is the one to tell.
    await rm(unfinished, { recursive: true, force: true }).catch(() => {})
    const code = systemCode(error)
    if (code === undefined) throw error
    return failed(
      code === 'ENOTEMPTY' || code === 'EEXIST'
        ? packageProblem('packageExists', place)
        : packageProblem('packageNotWritten', place, systemWords[code] ?? code),
    )
  }
}

const systemWords: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EACCES: 'nothing may be written there',
  EPERM: 'nothing may be written there',
  EROFS: 'nothing may be written there',
  ENOTDIR: 'there is a file where a folder is needed',
}

/** A path of ours in the ways of this system. Our own paths are safe; this is the last look before the disk. */
function inFolder(path: string): string {
  if (!isSafePath(path)) throw new RangeError(`path must stay in the package, got ${path}`)
  return path.split('/').join(sep)
}

async function writeFileWhole(path: string, bytes: Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true })
  const file = await open(path, 'wx')
  try {
    await file.writeFile(bytes)
    await file.sync()
  } finally {
    await file.close()
  }
}

const isThere = async (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  )

/** Code of an error of the operating system. */
const systemCode = (error: unknown): string | undefined => {
  const code = error instanceof Error && 'code' in error ? String(error.code) : undefined
  return code !== undefined && /^E[A-Z0-9]+$/.test(code) ? code : undefined
}

/** A package that lies in a folder. */
export async function folderSource(folder: string): Promise<Outcome<PackageSource>> {
  const root = await realpath(folder).catch(() => undefined)
  if (root === undefined || !(await stat(root)).isDirectory()) {
    return failed(packageProblem('packageUnreadable', { file: folder }, 'there is no such folder'))
  }
  return done({
    name: basename(folder),
    async read(path) {
      const file = await realpath(join(root, inFolder(path))).catch(() => undefined)
      if (file === undefined || !file.startsWith(root + sep)) return undefined
      return readFile(file).catch(() => undefined)
    },
  })
}
