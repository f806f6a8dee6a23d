import type { z } from 'zod'

/** What one route takes and gives. The server is bound to it, and the OpenAPI document is made from it. */
export interface Route {
  readonly method: 'get' | 'post' | 'put' | 'delete'
  /** `{word}` stands for a part of the path. */
  readonly path: `/api${string}`
  readonly group: RouteGroup
  /** What it does, a few words. */
  readonly about: string
  readonly params?: z.ZodObject
  readonly query?: z.ZodObject
  readonly body?: z.ZodType
  /** JSON where it is a schema; else the media type of what comes. */
  readonly answer: z.ZodType | { readonly media: string; readonly about: string }
  readonly status: 200 | 201 | 202 | 204
  /** Asks for `If-Match` with the version that the writer saw, and gives the new one as `ETag`. */
  readonly versioned?: true
}

/** Chapters of the OpenAPI document. */
export type RouteGroup = 'Lab' | 'Studies' | 'Records' | 'Papers' | 'Uploads' | 'Jobs' | 'Setups' | 'Reports'

/** A route with its schemas known to the compiler. */
export const route = <const R extends Route>(said: R): R => said
