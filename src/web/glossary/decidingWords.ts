import type { Word } from './word.ts'

export const decidingWords: readonly Word[] = [
  {
    key: 'sample',
    name: 'sample',
    meaning: 'What is compared: a lacquer, a drink, a treatment.',
    source: 'Definition.',
  },
  {
    key: 'replicate',
    name: 'replicate',
    meaning: 'A new mounting with fresh surfaces. A second sweep on the same surfaces is a repeat, not a replicate.',
    formula: 'n ≈ 2 (z_α + z_β)² (s / Δ)²  (the plan uses the exact t)',
    source: 'Noncentral t distribution; Cohen 1988, Statistical Power Analysis.',
  },
  {
    key: 'repeatability',
    name: 'scatter between replicates',
    meaning:
      'Standard deviation of true replicates, as a share of friction. Sweeps with fresh surfaces scatter by 3 to 10 %, elastomers more.',
    formula: 's = √(Σ(x − x̄)² / (n − 1))',
    source: 'ISO 5725-2; the range is common practice, no source.',
  },
  {
    key: 'difference',
    name: 'difference that matters',
    meaning: 'The smallest difference of friction worth knowing. It is decided by the use, before the data.',
    source: 'A person.',
  },
  {
    key: 'margin',
    name: 'margin',
    meaning:
      'Within it two samples count as the same. To show sameness the whole interval of the difference must lie in it.',
    formula: '−Δ < L and U < Δ',
    source: 'Two one-sided tests, Schuirmann 1987.',
  },
  {
    key: 'power',
    name: 'power and significance',
    meaning: 'Power: the chance to see a difference that is there. Significance: the chance to see one that is not.',
    source: 'Neyman & Pearson 1933 (from memory).',
  },
  {
    key: 'block',
    name: 'block',
    meaning: 'One run of each sample in an order drawn by lot, so that day, drift and ball set meet all samples alike.',
    source: 'Fisher 1935, The Design of Experiments.',
  },
  {
    key: 'checkStandard',
    name: 'check standard',
    meaning: 'A sample measured again and again to watch the rig; it opens and closes each day.',
    source: 'Common practice in metrology.',
  },
  {
    key: 'band',
    name: 'band',
    meaning:
      'Holds the whole curve, or the whole difference of two, at once with 95 % confidence; an interval holds one place.',
    source: 'Largest of the deviations over all speeds, by resampling.',
  },
  {
    key: 'verdict',
    name: 'verdict',
    meaning:
      'Where the band of the difference lies beyond zero or the margin, over which speeds, and where the data cannot tell.',
    source: 'Band and margin above.',
  },
]
