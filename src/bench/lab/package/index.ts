export { type Exported, exportLab } from './exportLab.ts'
export { type Imported, importPackage } from './importPackage.ts'
