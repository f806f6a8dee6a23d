// What the verb needs and nothing more: every module that it loads takes time and memory.
export { writeWhole } from '../writeWhole.ts'
export { drawStickSlip, type StickSlipOfFile, stickSlipOfFile, stickSlipText } from './stickSlipOfFile.ts'
