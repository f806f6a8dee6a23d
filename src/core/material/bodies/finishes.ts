import { memory, practice } from '../sources.ts'
import { finish } from './valueUnits.ts'

/** Polished metal, ceramic or glass plate. */
export const polished = finish('polished', [0.01, 0.02, 0.05], memory)
/** Ground plate. */
export const ground = finish('ground', [0.1, 0.2, 0.4], memory)
/** Turned or milled. */
export const turned = finish('turned', [0.4, 1.6, 6.3], practice)
/** Fired and not worked. */
export const asFired = finish('as fired', [0.3, 0.8, 2], practice)
/** Drawn or floated glass. */
export const firePolished = finish('fire-polished', [0.0005, 0.001, 0.005], memory)
/** Polymer against a ground mould. */
export const moulded = finish('moulded', [0.05, 0.3, 1], memory)
/** Polymer turned or milled. */
export const machined = finish('machined', [0.5, 1.5, 4], practice)
/** Elastomer cast against polished metal or glass. */
export const castOnGlass = finish('cast on glass', [0.005, 0.02, 0.1], memory)
/** Wood from the planer. */
export const planed = finish('planed', [2, 5, 12], memory)
/** Wood sanded with grit 180 to 240. */
export const sanded = finish('sanded', [3, 6, 10], memory)
/** Balls have grades: see `ballGrades`. */
export const lapped = finish('lapped ball, G3 to G100', [0.01, 0.02, 0.1], memory)
