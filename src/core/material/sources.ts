import type { From } from './knownValue.ts'

const seen = (source: string): From => ({ source, seen: 'source' })

/** Callister, Materials Science and Engineering, appendix B (B.1 density, B.2 modulus, B.3 Poisson, B.4 and B.5 strength, B.7 and B.8 heat) and table 19.1. */
export const callister = seen('Callister, Materials Science and Engineering, appendix B and table 19.1')
/** Dowling, Mechanical Behavior of Materials, tables 3.10 and 5.2. */
export const dowling = seen('Dowling, Mechanical Behavior of Materials, tables 3.10 and 5.2')
/** Crawford, Plastics Engineering, table 1.8. */
export const crawford = seen('Crawford, Plastics Engineering, table 1.8')
/** Lange's Handbook of Chemistry, table 10.2. */
export const lange = seen("Lange's Handbook of Chemistry, table 10.2")
/** Sheets of several suppliers. */
export const suppliers = seen('sheets of suppliers')
/** Published table of the thermal properties of polymers. */
export const polymerChart = seen('published charts of thermal properties of polymers')
/** Hardness of balls in the standard four-ball machine. */
export const ballStandard = seen('ASTM D5183')
/** Values of cured silicone elastomer in the literature and on sheets. */
export const siliconeLiterature = seen('sheets and literature on silicone elastomer, base to cross-linker 10:1')
/** Wood as an orthotropic body. */
export const woodScience = seen(
  'J. Wood Sci. 2019, 65 (mortise and tenon), table 1: beech, elastic constants and yield',
)
/** Wood as it is sold. */
export const woodAtlas = seen('Wagenführ, Holzatlas, as quoted by a timber trader')
/** Natural cork. */
export const corkSheets = seen('published data sheets of natural cork')
/** Leather as it is sold. */
export const leatherSheets = seen('trade dictionary of leather')
/** Typical values that nobody has held against a print. */
export const memory: From = { source: 'typical value, from memory', seen: 'memory' }
/** What everybody in the trade takes. */
export const practice: From = { source: 'common practice, no source', seen: 'common practice' }
