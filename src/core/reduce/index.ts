export { assumedTilt, reduceDefaults } from './defaults.ts'
export { reduceRecord } from './reduceRecord.ts'
export { partialTurnShare } from './remarks/underOneTurn.ts'
