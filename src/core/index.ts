/**
 * The library: pure computation without input, output, clock or chance, for Node, workers and browsers alike.
 * The words that all rooms share come by their own names, everything else under the name of its room.
 */
export * as contact from './contact/index.ts'
export * as curve from './curve/index.ts'
export * as decide from './decide/index.ts'
export * as film from './film/index.ts'
export * as fixture from './fixture/index.ts'
export * as material from './material/index.ts'
export * as numeric from './numeric/index.ts'
export * as plan from './plan/index.ts'
export * as quantity from './quantity/index.ts'
export * as reduce from './reduce/index.ts'
export * as questions from './reduce/questions/index.ts'
export * as rig from './rig/index.ts'
export * as stats from './stats/index.ts'
export * as judging from './stats/judging/index.ts'
export * from './terms/index.ts'
