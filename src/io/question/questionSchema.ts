import { keySchema } from '../setup/jsonSchema.ts'
import { wholeQuestion } from './wholeQuestion.ts'

/** The JSON Schema of question files, from the same tables as the reader. See `setupJsonSchema`. */
export const questionJsonSchema = (): Readonly<Record<string, unknown>> => ({
  $schema: 'http://json-schema.org/draft-07/schema#',
  title: 'Question for Kufe',
  ...keySchema(wholeQuestion),
})
