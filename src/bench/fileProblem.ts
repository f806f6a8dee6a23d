import type { Problem } from '../core/terms/index.ts'

type FileProblemKind = 'fileMissing' | 'fileIsFolder' | 'fileNotAllowed' | 'diskFull' | 'fileExists' | 'fileOther'

interface FileWords {
  readonly kind: FileProblemKind
  readonly what: string
  readonly mend: string
}

const reading: Readonly<Record<string, FileWords>> = {
  ENOENT: { kind: 'fileMissing', what: 'There is no such file.', mend: 'Check the name and the folder.' },
  EISDIR: { kind: 'fileIsFolder', what: 'This is a folder, not a file.', mend: 'Name one file in it.' },
  EACCES: {
    kind: 'fileNotAllowed',
    what: 'The file may not be read.',
    mend: 'Ask for the right to read it, or copy it.',
  },
}

const writing: Readonly<Record<string, FileWords>> = {
  EISDIR: { kind: 'fileIsFolder', what: 'A folder has this name.', mend: 'Choose another name for the file.' },
  EEXIST: {
    kind: 'fileExists',
    what: 'There is a file where a folder is needed, or one already.',
    mend: 'Choose another name.',
  },
  ENOTDIR: { kind: 'fileExists', what: 'There is a file where a folder is needed.', mend: 'Choose another folder.' },
  EACCES: { kind: 'fileNotAllowed', what: 'Nothing may be written here.', mend: 'Choose a folder of your own.' },
  EROFS: { kind: 'fileNotAllowed', what: 'Nothing may be written here.', mend: 'Choose a folder of your own.' },
  ENOSPC: { kind: 'diskFull', what: 'The disk is full.', mend: 'Make room, or choose another disk.' },
}

/** What the operating system refused, as a problem. Reading is a matter of the input, writing one of use. Other errors are ours and thrown on. */
export function fileProblem(error: unknown, file: string, doing: 'read' | 'write'): Problem {
  const code = error instanceof Error && 'code' in error ? String(error.code) : undefined
  if (code === undefined || !/^E[A-Z0-9]+$/.test(code)) throw error
  const other: FileWords = {
    kind: 'fileOther',
    what: `The system refused to ${doing} it (${code}).`,
    mend: 'Try another place, or ask whoever looks after this computer.',
  }
  const words = (doing === 'read' ? reading : writing)[code] ?? other
  return { ...words, class: doing === 'read' ? 'badInput' : 'wrongUse', place: { file } }
}
