export { inventedLine } from './assembleDialect.ts'
export { readVirtualRun, type VirtualRunFile } from './readVirtualRun.ts'
export { recordColumns } from './recordColumns.ts'
export { virtualRunTemplate } from './virtualRunTemplate.ts'
