import { type Dimension, printExact } from '../../core/quantity/index.ts'
import { reduceDefaults } from '../../core/reduce/index.ts'
import type { ReduceOptions } from '../../core/terms/index.ts'
import type { QuantityKey, Range, Section } from './keyKinds.ts'

interface Allowed extends Range {
  readonly dimension: Dimension
}

type NumberOption = Exclude<keyof ReduceOptions, 'segmentation'>

/** Ways to find the steps as setup files write them, and as the program calls them. */
export const segmentationsWritten: Readonly<Record<string, ReduceOptions['segmentation']>> = {
  auto: 'auto',
  'step column': 'stepColumn',
  plateaus: 'plateaus',
  ramp: 'ramp',
}

function option(name: NumberOption, { dimension, ...range }: Allowed, about: string): QuantityKey {
  const value = printExact(reduceDefaults[name], dimension)
  return { is: 'quantity', dimension, range, about, example: value, default: value }
}

const share: Range = { above: 0, below: 1 }

export const optionKeys: Section = {
  is: 'section',
  about: 'Thresholds of the reduction. Leave out what the defaults do well.',
  keys: {
    segmentation: {
      is: 'choice',
      choices: Object.keys(segmentationsWritten),
      example: reduceDefaults.segmentation,
      default: reduceDefaults.segmentation,
      about: 'How steps are found: by the step column, by plateaus of speed, or by binning a ramp in log speed.',
    },
    rampBinsPerDecade: option(
      'rampBinsPerDecade',
      { dimension: 'count', least: 1, most: 1000 },
      'Speed bins per decade of a ramp.',
    ),
    settleTolerance: option(
      'settleTolerance',
      { dimension: 'ratio', ...share },
      'A speed has settled when it stays within this share of its target.',
    ),
    floorFactor: option(
      'floorFactor',
      { dimension: 'ratio', above: 0, most: 1000 },
      'A torque of less than this many of its standard uncertainties is under the floor.',
    ),
    forceTolerance: option(
      'forceTolerance',
      { dimension: 'ratio', ...share },
      'Axial force further than this from its target gets a remark.',
    ),
    temperatureTolerance: option(
      'temperatureTolerance',
      { dimension: 'temperatureDifference', above: 0, most: 1000 },
      'Temperature further than this from its target gets a remark.',
    ),
    forceRippleLimit: option(
      'forceRippleLimit',
      { dimension: 'ratio', above: 0, most: 10 },
      'Once-per-turn ripple of axial force that gets a remark.',
    ),
    frictionRippleLimit: option(
      'frictionRippleLimit',
      { dimension: 'ratio', above: 0, most: 10 },
      'Once-per-turn ripple of friction that gets a remark.',
    ),
    contactShare: option(
      'contactShare',
      { dimension: 'ratio', ...share },
      'Under this share of the commanded axial force the contact counts as lost.',
    ),
    gapCreepLimit: option(
      'gapCreepLimit',
      { dimension: 'length', above: 0, most: 0.1 },
      'Creep of the gap within one step, beyond its noise, that gets a remark.',
    ),
    biasLimit: option(
      'biasLimit',
      { dimension: 'ratio', ...share },
      'Share of friction that a partial turn, a zero or a drag may cost inside the believable window.',
    ),
    significance: option(
      'significance',
      { dimension: 'ratio', above: 0, most: 0.5 },
      'Significance below which a trend or a stick-slip line counts as found.',
    ),
    bandDraws: option(
      'bandDraws',
      { dimension: 'count', least: 100, most: 1e6 },
      'Bootstrap draws behind the band of the curve.',
    ),
    seed: option(
      'seed',
      { dimension: 'count', least: 0, most: 4294967295 },
      'Seed of the draws; the same seed gives the same band.',
    ),
  },
}
