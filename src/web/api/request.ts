import type { ProblemDetails } from '../../server/contract/index.ts'
import { connectionLost, connectionSeen } from './connection.ts'

/** What the server says when it refuses (RFC 9457); what stands between us and the server may say less. */
export type SaidProblem = Pick<ProblemDetails, 'title' | 'status'> & Partial<ProblemDetails>

/** The server understood and refused. Show `problem` where its cause is, with `<Refused>`. */
export class Refusal extends Error {
  readonly problem: SaidProblem
  constructor(problem: SaidProblem) {
    super(problem.detail ?? problem.title)
    this.problem = problem
  }
}

/** Nobody answered: the server is away. What was to be sent is still the caller's. */
export class Away extends Error {}

export interface RequestOptions {
  readonly method?: 'GET' | 'PUT' | 'POST' | 'DELETE'
  /** Sent as JSON, or as it is where it is a Blob. */
  readonly body?: unknown
  readonly headers?: Readonly<Record<string, string>>
  readonly signal?: AbortSignal
}

/** Asks the server; throws a Refusal or Away. An abort comes through as the platform's AbortError. */
export async function request<T>(path: string, options: RequestOptions = {}): Promise<T> {
  const { method = 'GET', body, headers = {}, signal } = options
  const raw = body instanceof Blob
  const type = raw ? 'application/octet-stream' : 'application/json'
  let response: Response
  try {
    response = await fetch(path, {
      method,
      headers: { accept: 'application/json', ...(body === undefined ? {} : { 'content-type': type }), ...headers },
      body: body === undefined ? undefined : raw ? body : JSON.stringify(body),
      signal,
    })
  } catch (error) {
    if (signal?.aborted) throw error
    connectionLost()
    throw new Away('the server does not answer', { cause: error })
  }
  // A proxy's word for a server that is away.
  if (response.status === 502 || response.status === 504) {
    connectionLost()
    throw new Away('the server does not answer')
  }
  connectionSeen()
  const text = await response.text()
  if (!response.ok) throw new Refusal(problemFrom(text, response))
  return (text === '' ? undefined : JSON.parse(text)) as T // the contract's type, held by the server's own tests
}

function problemFrom(text: string, { status, statusText }: Response): SaidProblem {
  try {
    const found: unknown = JSON.parse(text)
    if (typeof found === 'object' && found !== null && 'title' in found) {
      return { status, ...(found as Omit<SaidProblem, 'status'>) } // RFC 9457: a title is there, all else is optional
    }
  } catch {
    // Not JSON: whatever stood between us and the server wrote it.
  }
  return { status, title: statusText === '' ? `The server answered ${status}.` : statusText }
}
