import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'

/** Longest JSON that is read, bytes. Files come as uploads, which have a bound of their own. */
const longestJson = 8 << 20

/** The JSON body of a request. Reads no further than the bound, whatever the request says of its length. */
export async function readJson(request: Request): Promise<Outcome<unknown>> {
  const type = request.headers.get('content-type')?.split(';')[0].trim().toLowerCase()
  if (type !== 'application/json') return failed(notJson(type))
  if (Number(request.headers.get('content-length') ?? 0) > longestJson) return failed(tooLarge(longestJson))
  const pieces: Uint8Array[] = []
  let size = 0
  for await (const piece of request.body ?? []) {
    size += piece.length
    if (size > longestJson) return failed(tooLarge(longestJson))
    pieces.push(piece)
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(pieces))
    return done(JSON.parse(text))
  } catch (error) {
    return failed(unreadable(error instanceof Error ? error.message : ''))
  }
}

/** Says how much may come. */
export const tooLarge = (most: number): Problem => ({
  kind: 'bodyTooLarge',
  class: 'wrongUse',
  place: { name: 'the body of the request' },
  what: `More than ${Math.round(most / 2 ** 20)} MiB came.`,
  mend: 'Send less at once; long records can be added with "kufe add" as well.',
})

const notJson = (type: string | undefined): Problem => ({
  kind: 'mediaWrong',
  class: 'wrongUse',
  place: { name: 'content-type', cell: type?.slice(0, 80) },
  what: 'The body is not said to be JSON.',
  mend: 'Send it with the header content-type: application/json.',
})

const unreadable = (said: string): Problem => ({
  kind: 'jsonWrong',
  class: 'wrongUse',
  place: { name: 'the body of the request' },
  what: `The body is no JSON: ${said.slice(0, 200)}.`,
  mend: 'Send JSON in UTF-8.',
})
