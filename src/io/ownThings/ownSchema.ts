import { keySchema } from '../setup/jsonSchema.ts'
import { ownKeys } from './ownKeys.ts'

/** The JSON Schema of files of own bodies and liquids, from the same tables as the reader. */
export const ownJsonSchema = (): Readonly<Record<string, unknown>> => ({
  $schema: 'http://json-schema.org/draft-07/schema#',
  title: 'Body or liquid for Kufe',
  ...keySchema(ownKeys),
})
