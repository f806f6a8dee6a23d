import type { SimulatedFiles } from '../../bench/index.ts'

/** What was written, and what to do with it. */
export const simulationInWords = ({ record, setup, truth, rows, steps, seed }: SimulatedFiles): string =>
  [
    `Invented record of ${rows} rows in ${steps} steps, seed ${seed}:`,
    `  ${record}`,
    `  ${setup}  the setup that reduces it`,
    `  ${truth}  the truth that it was made from`,
    `Next: kufe reduce ${record} --setup ${setup}`,
    '',
  ].join('\n')
