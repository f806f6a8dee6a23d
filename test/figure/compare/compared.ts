import { compareSamples } from '../../../src/core/decide/index.ts'
import type { Comparison } from '../../../src/core/terms/index.ts'
import { replicates } from '../../core/decide/replicates.ts'

const bends = (speed: number): number => 0.2 / (1 + (0.5 * (speed / 0.01) ** 2) / (1 + (speed / 0.01) ** 2))

function compared(...[all, ask]: Parameters<typeof compareSamples>): Comparison {
  const outcome = compareSamples(all, { ...ask, options: { draws: 400, ...ask?.options } })
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

/** Four invented samples: one that bends away, two that are alike, one replicate taken out and one that stands out. */
export const four = compared(
  [
    ...replicates('varnish A', [1.02, 0.99, 1, 1.01, 0.98]),
    ...replicates('varnish B', [1.03, 1, 1.02, 1.01, 1.35], { law: bends }),
    ...replicates('wax', [0.7, 0.72, 0.69]),
    ...replicates('oil & soap', [0.71, 0.7, 0.705, 0.702, 0.86]),
  ],
  { removals: [{ record: 'varnish B-5', by: 'MK', why: 'ball scratched' }] },
)

/** Two samples at a single speed, on the scale of differences. */
export const single = compared(
  [...replicates('A', [1.02, 0.99, 1], { speeds: [0.01] }), ...replicates('B', [0.9, 0.92, 0.91], { speeds: [0.01] })],
  { options: { scale: 'difference', margin: 0.01 } },
)
