export { folderSource, writePackageFolder } from './folderPackage.ts'
export type {
  BesideRecord,
  PackageContent,
  PackageDocument,
  PackagedLab,
  PackageLicence,
  PackagePaper,
  PackageRecord,
  PackageRecordVersion,
  PackageResult,
  PackageSetup,
  PackageTitled,
} from './packageContent.ts'
export type { PackageFile } from './packageFile.ts'
export { dataPackageFiles } from './packageFiles.ts'
export { packageProblemKinds } from './packageProblem.ts'
export type { PackageSource } from './packageSource.ts'
export { pointsCsv, pointsJson, pointsParquet } from './pointTables.ts'
export { readDataPackage } from './readDataPackage.ts'
export { zipPackage, zipSource } from './zipPackage.ts'
