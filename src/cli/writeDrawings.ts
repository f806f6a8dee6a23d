import { done, type Outcome } from '../core/terms/index.ts'

/** Writes drawings into a file, or, where there are several, into files numbered before their ending. Those that are undefined are left out. */
export async function writeDrawings(
  file: string,
  drawings: readonly (string | undefined)[],
): Promise<Outcome<readonly string[]>> {
  const { writeWhole } = await import('../bench/index.ts')
  const written: string[] = []
  for (const [place, drawing] of drawings.entries()) {
    if (drawing === undefined) continue
    const name = drawings.length === 1 ? file : file.replace(/(\.[^./]*)?$/, (ending) => `-${place + 1}${ending}`)
    const one = writeWhole(name, drawing)
    if (!one.ok) return one
    written.push(one.value)
  }
  return done(written)
}
