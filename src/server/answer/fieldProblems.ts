import type { z } from 'zod'
import type { Problem } from '../../core/terms/index.ts'

/** Part of a request that somebody filled in. */
export type RequestPart = 'path' | 'query' | 'body'

/** Nobody reads more. */
const most = 50

/** What a schema found, each with the field and what would mend it. */
export const fieldProblems = (error: z.ZodError, part: RequestPart): Problem[] =>
  error.issues.slice(0, most).map((issue) => {
    const field = issue.path.map(String).join('.')
    const name = field === '' ? `the ${part} of the request` : field.slice(0, 200)
    const own = issue.code === 'too_big' || issue.code === 'invalid_format' || issue.code === 'custom'
    return {
      kind: 'fieldWrong',
      class: part === 'body' ? 'badInput' : 'wrongUse',
      place: { name },
      what: own ? `"${name}" is not as it should be.` : `"${name}" is not as it should be: ${issue.message}.`,
      mend: own ? issue.message : 'The page /api says what this route takes.',
    }
  })
