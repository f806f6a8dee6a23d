/** What the three regimes are called, from slow to fast. */
export type RegimeNames = readonly [slow: string, between: string, fast: string]

/** With a liquid between the bodies. */
export const wetRegimes: RegimeNames = ['boundary', 'mixed', 'full film']

/** Without one there is no film to speak of; the branches of the curve are there all the same. */
export const dryRegimes: RegimeNames = ['slow branch', 'transition', 'fast branch']
