import type { Place, Sha256 } from '../core/terms/index.ts'
import type { Engine } from './engine.ts'

interface RawWords {
  readonly place: Place
  readonly what: string
  readonly mend: string
}

const fromBackup = 'Put them back from a backup of the lab, or from the file as it came from the rig.'

/** Words for raw bytes that are gone. */
export const rawMissing = ({ place }: Pick<Engine, 'place'>, id: Sha256): RawWords => ({
  place: { ...place, name: 'raw', cell: id },
  what: `The raw bytes of record ${id} are gone.`,
  mend: fromBackup,
})

/** Words for raw bytes that are not the ones that came. */
export const rawChanged = ({ place }: Pick<Engine, 'place'>, id: Sha256): RawWords => ({
  place: { ...place, name: 'raw', cell: id },
  what: `The raw bytes of record ${id} are not the ones that were kept.`,
  mend: fromBackup,
})
