import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, statSync } from 'node:fs'
import { extname, join, sep } from 'node:path'
import { promisify } from 'node:util'
import { brotliCompress, constants, gzip } from 'node:zlib'

/** One file of the built page, as it is and pressed. */
export interface PageFile {
  readonly type: string
  readonly bytes: Uint8Array
  readonly tag: string
  readonly gzip: Uint8Array | undefined
  readonly brotli: Uint8Array | undefined
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
  '.otf': 'font/otf',
  '.txt': 'text/plain; charset=utf-8',
}

const pressed = /^(?:text\/|application\/(?:json|manifest)|image\/svg|font\/otf)/

/**
 * The files of a folder, listed once and read when they are first asked for. What is not on the list is not there, so no
 * address leads out of the folder. A page that was built anew is listed anew.
 */
export class PageFiles {
  readonly #folder: string
  #built = Number.NaN
  #paths = new Map<string, string>()
  #read = new Map<string, Promise<PageFile>>()

  constructor(folder: string) {
    this.#folder = folder
  }

  /** `path` begins with a slash; undefined where there is no such file. */
  get(path: string): Promise<PageFile> | undefined {
    this.#listAnew()
    const file = this.#paths.get(path)
    if (file === undefined) return undefined
    const known = this.#read.get(path) ?? pageFile(file)
    this.#read.set(path, known)
    return known
  }

  #listAnew(): void {
    const built = statSync(join(this.#folder, 'index.html'), { throwIfNoEntry: false })?.mtimeMs ?? 0
    if (built === this.#built) return
    this.#built = built
    this.#read = new Map()
    const found = built === 0 ? [] : readdirSync(this.#folder, { recursive: true, withFileTypes: true })
    const files = found.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name))
    this.#paths = new Map(files.map((file) => [file.slice(this.#folder.length).split(sep).join('/'), file]))
  }
}

async function pageFile(file: string): Promise<PageFile> {
  const bytes = readFileSync(file)
  const type = types[extname(file)] ?? 'application/octet-stream'
  const tag = `"${createHash('sha256').update(bytes).digest('base64url').slice(0, 22)}"`
  if (!pressed.test(type) || bytes.length < 500) return { type, bytes, tag, gzip: undefined, brotli: undefined }
  const quality = { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }
  const [gzipped, brotli] = await Promise.all([
    promisify(gzip)(bytes, { level: 9 }),
    promisify(brotliCompress)(bytes, quality),
  ])
  return { type, bytes, tag, gzip: gzipped, brotli }
}
