import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Hono } from 'hono'
import { jsonAnswer } from '../bind.ts'
import type { ServerDesk } from '../desk.ts'
import { openApiDocument } from '../openapi/openApiDocument.ts'
import { openApiPage, openApiStyle } from '../openapi/openApiPage.ts'

const pagePolicy = "default-src 'none'; style-src 'self'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'"

const resultSchema = fileURLToPath(new URL('../../../schema/result.schema.json', import.meta.url))

/** What the routes are, for programs and for people. */
export function openApiRoutes(app: Hono, { held }: ServerDesk): void {
  const document = openApiDocument(held.outside.program)
  app.get('/api/openapi.json', () => jsonAnswer(document, 200))
  app.get('/api/result.schema.json', () => jsonAnswer(JSON.parse(readFileSync(resultSchema, 'utf8')), 200))
  app.get('/api/page.css', (c) => c.text(openApiStyle, 200, { 'content-type': 'text/css; charset=utf-8' }))
  app.get('/api', (c) => c.html(openApiPage(document), 200, { 'content-security-policy': pagePolicy }))
}
