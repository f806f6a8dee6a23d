import { randomFrom } from '../../src/core/numeric/index.ts'
import type { Heard, Killing } from './child.ts'
import {
  type Aftermath,
  type Ground,
  killAdding,
  killBackup,
  killMaking,
  killMigration,
  type TaskName,
} from './tasks.ts'

/** What became of the kills of one task. */
export interface Tally {
  readonly task: TaskName
  kills: number
  /** Kills that came too late, the child had ended: not counted, another one follows. */
  late: number
  /** Things acknowledged before the kills, all found again. */
  acknowledged: number
  /** Things kept whose acknowledgement the kill cut off. */
  unsaid: number
  /** Files without a row, cleared away. */
  leftOver: number
}

/** How often each task comes up. */
const weights: readonly (readonly [TaskName, number])[] = [
  ['add', 5],
  ['backup', 2],
  ['migrate', 2],
  ['new', 1],
]

/** Longest wait before a child that adds is killed, ms. */
const window = 250

export interface KillOptions {
  readonly kills: number
  readonly seed: number
  readonly tasks: readonly TaskName[]
  readonly onKill?: (done: number) => void
}

/**
 * Kills children at random moments and looks after each kill, as the next start of the program would.
 * Throws at the first thing that is not as it must be: everything acknowledged is there, nothing half-written is to be
 * seen, and the program goes on without a repair by hand.
 */
export async function killRounds(ground: Ground, { kills, seed, tasks, onKill }: KillOptions): Promise<Tally[]> {
  const random = randomFrom(seed)
  const bag = weights.flatMap(([task, weight]) => (tasks.includes(task) ? Array<TaskName>(weight).fill(task) : []))
  const tallies = new Map(
    tasks.map((task) => [task, { task, kills: 0, late: 0, acknowledged: 0, unsaid: 0, leftOver: 0 }]),
  )
  const lasts = new Map<TaskName, number>()
  for (const task of tasks)
    lasts.set(task, task === 'add' ? window : (task === 'backup' ? 2 : 1) * (await lasting(ground, task)))
  for (let done = 0, round = 0; done < kills; round++) {
    const task = bag[random.integer(bag.length)]
    const after = Math.round(random.uniform() * (lasts.get(task) ?? window) * 10) / 10
    const { heard, unsaid, leftOver } = await named(`kill ${round}, ${task} after ${after} ms`, () =>
      run(ground, task, { after }),
    )
    const tally = tallies.get(task)
    if (tally === undefined) throw new RangeError(`task ${task} was not asked for`)
    tally.acknowledged += heard.kept.length
    tally.unsaid += unsaid
    tally.leftOver += leftOver
    if (heard.killed) {
      tally.kills++
      done++
      onKill?.(done)
    } else {
      tally.late++
      lasts.set(task, heard.lasted) // the machine has become less busy
    }
  }
  return [...tallies.values()]
}

/** How long a task takes that is left alone. */
async function lasting(ground: Ground, task: TaskName): Promise<number> {
  return (await run(ground, task, { count: 1 })).heard.lasted
}

function run(ground: Ground, task: TaskName, killing: Killing): Promise<Aftermath> {
  if (task === 'add') return killAdding(ground, killing)
  if (task === 'backup') return killBackup(ground, killing)
  return task === 'migrate' ? killMigration(ground, killing) : killMaking(ground, killing)
}

/** Says at which kill something was wrong. */
async function named<T>(what: string, act: () => Promise<T>): Promise<T> {
  try {
    return await act()
  } catch (error) {
    throw new Error(`${what}: ${error instanceof Error ? error.message : error}`, { cause: error })
  }
}

/**
 * Kills a child before its first step on the disk or in the database, another one before its second, and so on, every
 * `stride`-th until one gets through. Gives how many were killed.
 */
export async function killAtSteps(
  ground: Ground,
  task: TaskName,
  { first, stride }: { readonly first: number; readonly stride: number },
): Promise<number> {
  let killed = 0
  for (let step = first; ; step += stride) {
    const { heard }: { heard: Heard } = await named(`${task}, killed at step ${step}`, () =>
      run(ground, task, { dieAt: step, count: task === 'backup' ? 1 : 3 }),
    )
    if (!heard.killed) return killed
    killed++
  }
}
