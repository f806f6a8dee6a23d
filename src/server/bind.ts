import type { Context, Hono } from 'hono'
import type { z } from 'zod'
import { done, failed, type Outcome, type Problem } from '../core/terms/index.ts'
import { fieldProblems, type RequestPart } from './answer/fieldProblems.ts'
import { problemAnswer } from './answer/problemAnswer.ts'
import { readJson } from './answer/readBody.ts'
import type { Route } from './contract/index.ts'

type Read<S> = S extends z.ZodType ? z.output<S> : undefined

/** A request whose parts were held against the schemas of its route. */
export interface Heard<R extends Route> {
  readonly params: Read<R['params']>
  readonly query: Read<R['query']>
  readonly body: Read<R['body']>
  readonly request: Request
}

/** What a handler gives: the answer in the shape of its route, or a whole response where the route says a media type. */
export type Given<R extends Route> = R['answer'] extends z.ZodType ? z.input<R['answer']> | Response : Response

/** Binds a route of the contract to what does it. Input is held against the schemas; problems become problem details. */
export function bind<R extends Route>(
  app: Hono,
  route: R,
  handle: (heard: Heard<R>) => Promise<Outcome<Given<R>>> | Outcome<Given<R>>,
): void {
  const path = route.path.replace(/\{(\w+)\}/g, ':$1')
  app.on(route.method.toUpperCase(), path, async (c: Context) => {
    const heard = await hear(route, c)
    if (!heard.ok) return problemAnswer(heard.problems)
    const given = await handle(heard.value)
    if (!given.ok) return problemAnswer(given.problems)
    return given.value instanceof Response ? given.value : jsonAnswer(given.value, route.status)
  })
}

/** A value as JSON; NaN and infinities become null. */
export const jsonAnswer = (value: unknown, status: number, headers: Readonly<Record<string, string>> = {}): Response =>
  new Response(status === 204 ? null : JSON.stringify(value), {
    status,
    headers: {
      ...(status === 204 ? {} : { 'content-type': 'application/json' }),
      'cache-control': 'no-store',
      ...headers,
    },
  })

async function hear<R extends Route>(route: R, c: Context): Promise<Outcome<Heard<R>>> {
  const params = part(route.params, c.req.param(), 'path')
  const query = part(route.query, c.req.query(), 'query')
  const json = route.body === undefined ? done(undefined) : await readJson(c.req.raw)
  const body = json.ok ? part(route.body, json.value, 'body') : json
  const problems = [params, query, body].flatMap((one): readonly Problem[] => (one.ok ? [] : one.problems))
  if (!params.ok || !query.ok || !body.ok) return failed(...problems)
  const heard = { params: params.value, query: query.value, body: body.value, request: c.req.raw }
  return done(heard as Heard<R>) // each part was parsed by the schema that its type comes from
}

function part(schema: z.ZodType | undefined, value: unknown, name: RequestPart): Outcome<unknown> {
  if (schema === undefined) return done(undefined)
  const read = schema.safeParse(value)
  return read.success ? done(read.data) : failed(...fieldProblems(read.error, name))
}
