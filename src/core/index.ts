/**
 * The library: pure computation without input, output, clock or chance, for Node, workers and browsers alike.
 * The words that all rooms share come by their own names, everything else under the name of its room.
 */
export * as fixture from './fixture/index.ts'
export * as numeric from './numeric/index.ts'
export * as quantity from './quantity/index.ts'
export * as stats from './stats/index.ts'
export * from './terms/index.ts'
