import { apparatus } from './apparatus.ts'
import { averaging } from './averaging.ts'
import { corrections } from './corrections.ts'
import { curveFitting } from './curveFitting.ts'
import type { Done } from './done.ts'
import { leftOut } from './leftOut.ts'
import { procedure } from './procedure.ts'
import { segmentation } from './segmentation.ts'
import { uncertainty } from './uncertainty.ts'

/** One paragraph of a methods section under its run-in heading. */
export interface MethodParagraph {
  readonly lead: string
  readonly text: string
}

/**
 * The method as a journal would want it, written from what was done to this record: every number is one that was used or
 * found. The same reduction gives the same words.
 */
export const methodParagraphs = (done: Done): readonly MethodParagraph[] =>
  [
    { lead: 'Apparatus', text: apparatus(done) },
    { lead: 'Procedure', text: procedure(done) },
    { lead: 'Steps', text: segmentation(done) },
    { lead: 'Zeroes and corrections', text: corrections(done) },
    { lead: 'Rows left out', text: leftOut(done) },
    { lead: 'Friction of a step', text: averaging(done) },
    { lead: 'Uncertainty', text: uncertainty(done) },
    { lead: 'Curve', text: curveFitting(done) },
  ].filter(({ text }) => text !== '')
