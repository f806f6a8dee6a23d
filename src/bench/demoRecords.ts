import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** One invented record that comes with the program, and what is to be seen in it. */
export interface DemoRecord {
  readonly scenario: 'lacquer' | 'oat-drinks'
  readonly name: string
  /** One sentence. */
  readonly look: string
}

const lacquer = (name: string, look: string): DemoRecord => ({ scenario: 'lacquer', name, look })
const oats = (name: string, look: string): DemoRecord => ({ scenario: 'oat-drinks', name, look })

/** In the order in which they tell the story. */
export const demoRecords: readonly DemoRecord[] = [
  lacquer('lacquer-a-1', 'A dry lacquer: friction rises a little with speed; the slow steps turn less than once.'),
  lacquer('lacquer-a-2', 'Lacquer A on a fresh plate with fresh balls.'),
  lacquer('lacquer-a-3', 'Lacquer A, mounted a third time: how far mountings differ.'),
  lacquer('lacquer-b-1', 'The rival: as slippery when slow, more so when fast.'),
  lacquer('lacquer-b-2', 'Lacquer B on a fresh plate with fresh balls.'),
  lacquer('lacquer-b-3', 'Lacquer B, mounted a third time.'),
  lacquer('lacquer-a-tilted', 'A plate that leans by 2°: friction and force swing with every turn.'),
  lacquer('silicone-spray', 'So little friction at so small a load that slow steps lie near the torque floor.'),
  lacquer('wax', 'A liquid wax: boundary level, a minimum, and a film that carries at speed.'),
  oats('oat-drink-plain', 'A plain oat drink between glass and soft silicone, with a blank and German headings.'),
  oats('oat-drink-creamy', 'The creamy rival: lower when slow, its minimum at a lower speed.'),
]

/** Folder of the scenarios. */
export const examplesFolder = fileURLToPath(new URL('../../examples', import.meta.url))

/** The files of one demo record. */
export interface DemoFiles {
  /** The virtual run that the other three are made from. */
  readonly run: string
  readonly record: string
  readonly setup: string
  readonly truth: string
}

/** Where they lie; `folder` holds the scenarios. */
export function demoFiles({ scenario, name }: DemoRecord, folder = examplesFolder): DemoFiles {
  const stem = join(folder, scenario, name)
  return { run: `${stem}.run.yaml`, record: `${stem}.csv`, setup: `${stem}.setup.yaml`, truth: `${stem}.truth.json` }
}
