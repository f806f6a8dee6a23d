import { randomBytes } from 'node:crypto'
import type { Hono } from 'hono'
import { pagePolicy } from '../guard/safeHeaders.ts'
import { type PageFile, PageFiles } from './pageFiles.ts'

/** Serves the built page. Every address that is no file and no data is the page: each state of the bench has one. */
export function pageRoutes(app: Hono, folder: string): void {
  const files = new PageFiles(folder)
  app.get('*', async (c) => {
    const { path } = c.req
    const file = path === '/' || path === '/index.html' ? undefined : files.get(path)
    if (file !== undefined) return fileAnswer(await file, c.req.raw)
    if (/\.\w{1,8}$/.test(path)) return c.text('There is no such file.\n', 404)
    const page = files.get('/index.html')
    return page === undefined ? c.text(notBuilt, 503) : pageAnswer(await page)
  })
}

const notBuilt = 'The page of the bench is not built. Build it with: npx vite build src/web\n'

function fileAnswer(file: PageFile, request: Request): Response {
  const headers = new Headers({
    'content-type': file.type,
    etag: file.tag,
    vary: 'accept-encoding',
    // Names of built files hold a checksum of what is in them.
    'cache-control': /-[\w-]{8,}\.\w+$/.test(new URL(request.url).pathname)
      ? 'max-age=31536000, immutable'
      : 'no-cache',
  })
  if (request.headers.get('if-none-match') === file.tag) return new Response(null, { status: 304, headers })
  const accepts = request.headers.get('accept-encoding') ?? ''
  const encoding =
    file.brotli && /\bbr\b/.test(accepts) ? 'br' : file.gzip && /\bgzip\b/.test(accepts) ? 'gzip' : undefined
  if (encoding !== undefined) headers.set('content-encoding', encoding)
  const bytes = encoding === 'br' ? file.brotli : encoding === 'gzip' ? file.gzip : file.bytes
  return new Response(new Uint8Array(bytes ?? file.bytes), { headers })
}

/** The page itself, with the nonce of this answer for styles that its controls make. */
function pageAnswer({ bytes }: PageFile): Response {
  const nonce = randomBytes(16).toString('base64')
  const meta = `<meta property="csp-nonce" content="${nonce}" nonce="${nonce}">`
  const text = Buffer.from(bytes).toString('utf8').replace('<head>', `<head>${meta}`)
  return new Response(text, {
    headers: {
      'content-type': 'text/html; charset=utf-8',
      'cache-control': 'no-store',
      'content-security-policy': pagePolicy(nonce),
    },
  })
}
