import type { Place, Problem } from '../../core/terms/index.ts'

/** All that can be wrong with a data package that is read. */
export const packageProblemKinds = [
  'packageUnreadable',
  'packageForeign',
  'packageNewer',
  'packageDamaged',
  'fileMissing',
  'fileChanged',
  'pathUnsafe',
  'thingMissing',
  'packageExists',
  'packageNotWritten',
] as const

/** Name of one of them. */
export type PackageProblemKind = (typeof packageProblemKinds)[number]

type PackageWords = Readonly<
  Record<PackageProblemKind, { readonly what: (thing: string) => string; readonly mend: string }>
>

const words: PackageWords = {
  packageUnreadable: {
    what: (why) => `The package cannot be read: ${why}.`,
    mend: 'Name the folder or the zip file of a data package; ask for another copy if it is damaged.',
  },
  packageForeign: {
    what: () => 'This package holds no lab: it has no lab.json of this program.',
    mend: 'Add its files one by one, each with a setup.',
  },
  packageNewer: {
    what: (version) => `The package is of format ${version}, which this program does not know.`,
    mend: 'Update the program.',
  },
  packageDamaged: {
    what: (why) => `A list of the package is not as it must be: ${why}.`,
    mend: 'Ask for another copy of the package.',
  },
  fileMissing: {
    what: () => 'The package names this file, but it is not there.',
    mend: 'Ask for another copy of the package.',
  },
  fileChanged: {
    what: () => 'The file is not the one that was put into the package: its checksum differs.',
    mend: 'Ask for another copy of the package, and find out who changed this one.',
  },
  pathUnsafe: {
    what: () => 'The package names a path that leads out of it.',
    mend: 'Do not use this package; ask where it comes from.',
  },
  thingMissing: {
    what: (thing) => `The package names ${thing}, but does not hold it.`,
    mend: 'Ask for a package that holds everything.',
  },
  packageExists: {
    what: () => 'There is something of this name already.',
    mend: 'Choose another name.',
  },
  packageNotWritten: {
    what: (why) => `The package cannot be written: ${why}.`,
    mend: 'Choose a folder of your own on a disk with room.',
  },
}

/** A problem of that kind; `thing` is what its sentence speaks of. */
export const packageProblem = (kind: PackageProblemKind, place: Place, thing = ''): Problem => ({
  kind,
  class: kind === 'packageExists' || kind === 'packageNotWritten' ? 'wrongUse' : 'badInput',
  place,
  what: words[kind].what(thing),
  mend: words[kind].mend,
})
