export { type ExportArgs, exportLab } from './exportLab.ts'
export { type Imported, importPackage } from './importPackage.ts'
