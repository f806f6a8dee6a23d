import { capital, counted, percent } from '../words/printed.ts'
import type { Done } from './done.ts'

/** How the record was cut into steps, and how many there are. */
export function segmentation({ reduction, options }: Done): string {
  const slides = reduction.steps.filter(({ kind }) => kind === 'slide').length
  const blanks = reduction.steps.length - slides
  const found = `${counted(slides, 'step')} of sliding and ${blanks === 0 ? 'no stretch' : counted(blanks, 'stretch', 'stretches')} without contact were found.`
  return `${rule(reduction.segmentation, options.settleTolerance, options.rampBinsPerDecade)} ${capital(found)}`
}

function rule(how: Done['reduction']['segmentation'], tolerance: number, bins: number): string {
  switch (how) {
    case 'stepColumn':
      return 'The record was cut into steps by its own step column.'
    case 'plateaus':
      return `The record was cut where the speed changed: a step is a stretch whose speed over five rows in turn stays within ${percent(tolerance)}, and the rows on the way to a speed belong to the step that begins there.`
    case 'ramp':
      return `The speed ran through its range without being held, so the record was cut into ${bins} bins for each decade of speed, a new one wherever the speed left the bin.`
    case 'whole':
      return 'The speed was held all over the record, which was taken as one step.'
  }
}
