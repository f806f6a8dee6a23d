import { recordTurnDifference, recordTurnMap, type TurnQuantity } from '../../../core/reduce/index.ts'
import { done, failed, type Outcome } from '../../../core/terms/index.ts'
import type { PaletteName } from '../../../figure/index.ts'
import { drawTurnChange, drawTurnMap } from '../../turnMap/turnMapOfFile.ts'
import type { HeldColumns } from '../trace/heldColumns.ts'
import { type DetailDesk, noGap, withReduced } from './recordDetail.ts'

/** Late turns of a record against its early ones. */
export interface TurnChange {
  /** What was found, then what to do next. */
  readonly sentences: readonly string[]
  /** Profiles, then the map; empty where early and late cannot be compared. */
  readonly pictures: readonly { readonly caption: string; readonly light: string; readonly dark: string }[]
}

const width = 720

/** Compares late turns with early ones, and draws the comparison for light and dark pages. */
export const turnChangeOf = (
  held: HeldColumns,
  quantity: TurnQuantity,
  desk: DetailDesk,
): Promise<Outcome<TurnChange>> =>
  withReduced(held, desk, (record, reduced) => {
    if (quantity === 'gap' && held.channels.gap === undefined) return failed(noGap)
    const change = recordTurnDifference(record, quantity)
    const sentences = [change.sentence, ...change.remarks.map(({ next }) => next)]
    if (change.difference === null) return done({ sentences, pictures: [] })
    const file = { reduced, map: recordTurnMap(record, quantity), change }
    const both = (caption: string, draw: (palette: PaletteName) => string) => ({
      caption,
      light: draw('light'),
      dark: draw('dark'),
    })
    return done({
      sentences,
      pictures: [
        both('Early and late turns around the turn; their difference with a band for all places at once.', (palette) =>
          drawTurnChange(file, palette, width),
        ),
        both('When and where the track changed, turn by turn.', (palette) =>
          drawTurnMap(file, { palette, difference: true, width }),
        ),
      ],
    })
  })
