import type { OrderedSheet, SheetStepRow } from '../../../src/core/terms/index.ts'

/** Invented: a sheet of two parts, with what people might write as its title. */
export const inventedSheet: OrderedSheet = {
  title: 'Lacquer <A> & "B"',
  subtitle: 'steel on lacquer, dry, 2 N',
  foreword: ['The manual comes first.'],
  parts: [
    {
      name: 'zeroes',
      heading: 'Zeroes',
      entries: [
        {
          id: 'forceZero',
          cautions: ['The stage moves.'],
          text: 'Zero the axial force.',
          check: {
            read: 'axial force',
            dimension: 'force',
            low: -0.003,
            high: 0.003,
            accept: '-3 mN to 3 mN',
            otherwise: 'Zero again.',
          },
          duration: 60,
          distance: 0,
        },
      ],
    },
    {
      name: 'sweep',
      heading: 'Sweep',
      entries: [
        {
          id: 'sweep',
          cautions: [],
          text: 'Run the steps.',
          check: {
            read: 'all steps ran',
            dimension: 'yes',
            low: null,
            high: null,
            accept: 'yes',
            otherwise: 'Note which.',
          },
          duration: 600,
          distance: 3,
        },
      ],
    },
  ],
  sweep: [{ step: 1, slidingSpeed: 1e-3, angularVelocity: 1 / 15, dwell: 94, turns: 1 }],
  totals: { time: 660, distance: 3 },
}

/** So many steps, alike but for their speed. */
export const inventedSteps = (count: number): readonly SheetStepRow[] =>
  Array.from({ length: count }, (_, i) => ({
    step: i + 1,
    slidingSpeed: 1e-4 * 1.3 ** i,
    angularVelocity: (1e-4 * 1.3 ** i) / 0.015,
    dwell: Math.max(5, 120 / (i + 1)),
    turns: 1,
  }))
