import manifest from '../../package.json' with { type: 'json' }
import type { Outside } from '../core/terms/index.ts'
import { progressLine } from './progressLine.ts'
import type { Screen } from './screen.ts'

/** Clock, progress and version of this process. */
export const processOutside = (screen: Screen): Outside => ({
  now: () => new Date(),
  progress: progressLine(screen, () => performance.now()),
  // Ctrl+C ends the process at once: nothing is written but whole files. A verb that runs until then asks the desk.
  stop: { aborted: false },
  program: `kufe ${manifest.version}`,
})
