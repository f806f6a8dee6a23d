import { spawnSync } from 'node:child_process'
import { rmSync } from 'node:fs'
import { onTestFinished } from 'vitest'
import { temporaryFolder } from './engines.ts'

interface SmallDisk {
  readonly folder: string
  /** Mounts it again: `size=9m`, or `ro`. */
  readonly remount: (options: string) => void
}

const run = (...[program, ...args]: string[]): boolean => spawnSync(program, args, { stdio: 'ignore' }).status === 0

/** A file system in memory that can be full or read-only in earnest; undefined where we may not mount one. */
export function smallDisk(size: string): SmallDisk | undefined {
  const folder = temporaryFolder()
  if (!run('mount', '-t', 'tmpfs', '-o', `size=${size}`, 'tmpfs', folder)) return undefined
  onTestFinished(() => {
    run('umount', '--lazy', folder)
    rmSync(folder, { recursive: true, force: true })
  })
  return {
    folder,
    remount(options) {
      if (!run('mount', '-o', `remount,${options}`, folder))
        throw new Error(`cannot mount ${folder} again with ${options}`)
    },
  }
}

/** Said where a test needs a disk of its own. */
export const noMount = 'mounting a small disk needs root; faults of the file layer are injected in bytes/faults.test.ts'
