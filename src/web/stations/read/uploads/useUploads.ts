import { useSyncExternalStore } from 'react'
import type { Upload } from './upload.ts'
import { listenUploads, uploadsNow } from './uploadDesk.ts'

/** The files that were dropped for a study, in their order. */
export const useUploads = (study: string): readonly Upload[] =>
  useSyncExternalStore(listenUploads, uploadsNow).filter((one) => one.study === study)
