import type { Outcome } from '../../core/terms/index.ts'
import { readSetup, type SetupFile } from '../../io/index.ts'

/** Reads the text of a setup; all problems at once, each with its line. */
export const readSetupDocument = (text: string): Outcome<SetupFile> => readSetup(text, 'setup')
