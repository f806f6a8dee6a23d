import { statSync } from 'node:fs'
import { setTimeout } from 'node:timers/promises'
import { done, failed, type Outcome, type Outside, type Problem } from '../../core/terms/index.ts'
import type { OnAdd } from './addEvents.ts'
import { type AddWords, addFiles, addWords } from './addRecords.ts'
import { inLab } from './inLab.ts'
import type { Keeping } from './keepFiles.ts'
import type { LabCall } from './labCall.ts'
import { StillFiles } from './stillFiles.ts'

export interface WatchArgs extends Omit<AddWords, 'replicate'> {
  readonly folder: string
  /** Seconds for which a file must stay as it is before it is taken. */
  readonly still: number
}

export interface OnWatch {
  readonly outside: Outside
  readonly onAdd: OnAdd
  /** The lab could not take anything just now; it is tried again. */
  readonly onTrouble: (problems: readonly Problem[]) => void
}

/**
 * Adds records that appear in a folder, once they have stopped growing, until it is told to stop; then it ends what it is
 * at. All that it remembers lies in the lab: after a restart the files that are there are recognised by their bytes.
 */
export async function watchFolder(args: WatchArgs, call: LabCall, on: OnWatch): Promise<Outcome<null>> {
  const given = await addWords(args)
  if (!given.ok) return given
  if (statSync(args.folder, { throwIfNoEntry: false })?.isDirectory() !== true) return failed(noFolder(args.folder))
  const { outside } = on
  // What is known is no news to somebody who watches.
  const onAdd: OnAdd = (event) => (event.what === 'known' ? undefined : on.onAdd(event))
  return inLab(call, outside, async (lab) => {
    const keeping: Keeping = { lab, call, given: given.value, names: args.names, outside, onAdd }
    const files = new StillFiles(args.folder, args.setup)
    while (!outside.stop.aborted) {
      const still = files.look(outside.now().getTime(), 1000 * args.still)
      const added = still.length === 0 ? done(null) : await addFiles(still, args, keeping)
      if (!added.ok) {
        if (!added.problems.every(({ kind }) => passing.has(kind))) return added
        on.onTrouble(added.problems)
        files.again(still)
      }
      await pause(Math.min(2, Math.max(0.05, args.still / 4)), outside)
    }
    return done(null)
  })
}

/** Troubles of a lab that go by: somebody else writes, the disk is full, the server restarts. */
const passing = new Set(['labBusy', 'labUnreachable', 'diskFull'])

/** Waits, and looks twenty times a second whether it is to stop. */
async function pause(seconds: number, { stop }: Outside): Promise<void> {
  for (let left = 1000 * seconds; left > 0 && !stop.aborted; left -= 50) await setTimeout(Math.min(left, 50))
}

const noFolder = (folder: string): Problem => ({
  kind: 'folderMissing',
  class: 'badInput',
  place: { file: folder },
  what: 'There is no such folder.',
  mend: 'Check the name, or make the folder first.',
})
