import { z } from 'zod'
import type { Route } from '../contract/index.ts'
import { problemDetails, routes } from '../contract/index.ts'

type Json = Readonly<Record<string, unknown>>

const errors: Readonly<Record<string, string>> = {
  '4XX': 'What was asked cannot be done as it is; the problems say what, where and what would mend it.',
  '5XX': 'A fault of the program or of the lab.',
}

/** The OpenAPI 3.1 document of all routes, made from the contract that the server is bound to. */
export function openApiDocument(program: string): Json {
  const named = new Map<string, Json>()
  const paths: Record<string, Record<string, Json>> = {}
  for (const [id, route] of Object.entries<Route>(routes)) {
    paths[route.path] ??= {}
    paths[route.path][route.method] = operation(id, route, named)
  }
  schemaOf(problemDetails, 'output', named)
  return {
    openapi: '3.1.0',
    info: {
      title: 'Kufe bench',
      version: program.replace(/^\D+/, ''),
      description: 'Routes behind the bench. Values are SI; null stands for what is not known.',
    },
    paths,
    components: { schemas: Object.fromEntries([...named].sort(([a], [b]) => (a < b ? -1 : 1))) },
  }
}

function operation(operationId: string, route: Route, named: Map<string, Json>): Json {
  const parameters = [
    ...parametersOf(route.params, 'path', named),
    ...parametersOf(route.query, 'query', named),
    ...(route.versioned && route.method === 'put' ? [ifMatch] : []),
  ]
  return {
    operationId,
    tags: [route.group],
    summary: route.about,
    ...(parameters.length === 0 ? {} : { parameters }),
    ...bodyOf(route, named),
    responses: {
      [route.status]: answerOf(route, named),
      ...(route.versioned && route.method === 'put' ? { 412: problem('Somebody wrote in between.') } : {}),
      ...Object.fromEntries(Object.entries(errors).map(([status, about]) => [status, problem(about)])),
    },
  }
}

const problem = (description: string): Json => ({
  description,
  content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/ProblemDetails' } } },
})

const ifMatch: Json = {
  name: 'If-Match',
  in: 'header',
  required: true,
  description: 'The version that the writer saw, "0" for none.',
  schema: { type: 'string', examples: ['"3"'] },
}

function bodyOf(route: Route, named: Map<string, Json>): Json {
  if (route.body !== undefined) {
    return {
      requestBody: {
        required: true,
        content: { 'application/json': { schema: schemaOf(route.body, 'input', named) } },
      },
    }
  }
  if (route.path !== '/api/uploads') return {}
  const schema = { type: 'string', format: 'binary' }
  return { requestBody: { required: true, content: { 'application/octet-stream': { schema } } } }
}

function answerOf({ answer, status, about }: Route, named: Map<string, Json>): Json {
  if (status === 204) return { description: about }
  if (!(answer instanceof z.ZodType)) return { description: answer.about, content: { [answer.media]: {} } }
  return { description: about, content: { 'application/json': { schema: schemaOf(answer, 'output', named) } } }
}

function parametersOf(schema: z.ZodObject | undefined, place: 'path' | 'query', named: Map<string, Json>): Json[] {
  return Object.entries(schema?.shape ?? {}).map(([name, field]) => {
    const { description, ...own } = schemaOf(field as z.ZodType, 'input', named) // a shape holds schemas
    const required = place === 'path' || !(field as z.ZodType).safeParse(undefined).success
    return { name, in: place, required, ...(description === undefined ? {} : { description }), schema: own }
  })
}

/** A schema with its named parts put among the components. */
function schemaOf(schema: z.ZodType, io: 'input' | 'output', named: Map<string, Json>): Json {
  const made: Json = z.toJSONSchema(schema, { unrepresentable: 'any', io })
  const { $schema, $defs, ...own } = moved(made) as Json & { readonly $defs?: Record<string, Json> } // as toJSONSchema writes it
  for (const [name, part] of Object.entries($defs ?? {})) {
    const { id, ...rest } = part
    named.set(name, rest)
  }
  return own
}

/** References point to the components of the document. */
function moved(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(moved)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) => [
      key,
      key === '$ref' && typeof part === 'string' ? part.replace('#/$defs/', '#/components/schemas/') : moved(part),
    ]),
  )
}
