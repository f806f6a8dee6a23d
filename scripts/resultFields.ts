import { readFileSync, writeFileSync } from 'node:fs'

// Writes the tables of docs/json.md from schema/result.schema.json. Run it after a change of the schema; a test compares the two.

interface Schema {
  readonly description?: string
  readonly type?: string | readonly string[]
  readonly enum?: readonly unknown[]
  readonly const?: unknown
  readonly properties?: Readonly<Record<string, Schema>>
  readonly items?: Schema
  readonly oneOf?: readonly Schema[]
  readonly $ref?: string
  readonly definitions?: Readonly<Record<string, Schema>>
}

const begin = '<!-- fields: begin -->'
const end = '<!-- fields: end -->'

/** The page with its tables made anew. */
export function withFields(page: string, schema: Schema): string {
  const before = page.slice(0, page.indexOf(begin) + begin.length)
  const after = page.slice(page.indexOf(end))
  return `${before}\n${fieldTables(schema)}\n${after}`
}

/** One table for the document, one for each named definition. */
function fieldTables(schema: Schema): string {
  const named = Object.entries(schema.definitions ?? {})
  return [
    `### Document\n\n${table(schema)}`,
    ...named.map(([name, one]) => `### ${name}\n\n${one.description}\n\n${table(one)}`),
  ].join('\n\n')
}

const table = (schema: Schema): string =>
  ['| field | type | meaning |', '| --- | --- | --- |', ...rows(schema, '')].join('\n')

function rows(schema: Schema, path: string): readonly string[] {
  return Object.entries(schema.properties ?? {}).flatMap(([name, field]) => {
    const inner = path === '' ? name : `${path}.${name}`
    const row = `| \`${inner}\` | ${typeOf(field)} | ${field.description} |`
    if (field.items?.properties !== undefined) return [row, ...rows(field.items, `${inner}[]`)]
    return [row, ...rows(field, inner)]
  })
}

function typeOf(schema: Schema): string {
  if (schema.const !== undefined) return `\`"${schema.const}"\``
  if (schema.enum !== undefined) return schema.enum.map((value) => `\`${JSON.stringify(value)}\``).join(' ')
  if (schema.$ref !== undefined) return linked(schema.$ref)
  if (schema.oneOf !== undefined) return [...new Set(schema.oneOf.map(typeOf))].join(' or ')
  if (schema.type === 'array')
    return `list of ${schema.items?.$ref === undefined ? (schema.items?.type ?? 'things') : linked(schema.items.$ref)}`
  return Array.isArray(schema.type) ? schema.type.join(' or ') : String(schema.type)
}

const linked = (ref: string): string => {
  const name = ref.replace('#/definitions/', '')
  return `[${name}](#${name.toLowerCase()})`
}

if (import.meta.main) {
  const page = new URL('../docs/json.md', import.meta.url)
  const schema: Schema = JSON.parse(readFileSync(new URL('../schema/result.schema.json', import.meta.url), 'utf8'))
  writeFileSync(page, withFields(readFileSync(page, 'utf8'), schema))
}
