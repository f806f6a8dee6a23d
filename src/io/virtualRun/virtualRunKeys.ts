import type { Section } from '../setup/keyKinds.ts'
import { conditionKeys } from './conditionKeys.ts'
import { disturbanceKeys } from './disturbanceKeys.ts'
import { frictionKeys } from './frictionKeys.ts'
import { sheetKeys, speedKeys } from './sheetKeys.ts'
import { noiseKeys, signalKeys } from './signalKeys.ts'
import { tableKeys } from './tableKeys.ts'

/** What a virtual run says beside its setup: what the virtual rig does, and how its record is put down. */
export const virtualRunKeys: Section = {
  is: 'section',
  about: 'What a virtual rig does and how its record is put down.',
  keys: {
    seed: {
      is: 'quantity',
      dimension: 'count',
      range: { least: 0, most: Number.MAX_SAFE_INTEGER },
      example: '1',
      default: '1',
      about: 'Seed of the noise; the same seed gives the same record.',
    },
    speeds: speedKeys,
    sheet: sheetKeys,
    friction: frictionKeys,
    conditions: conditionKeys,
    noise: noiseKeys,
    signal: signalKeys,
    disturbances: disturbanceKeys,
    table: tableKeys,
  },
}
