import type { Problem } from '../../core/terms/index.ts'
import type { ProblemDetails } from '../contract/index.ts'

/** Kinds of problem that say more than their class. */
const statuses: Readonly<Record<string, number>> = {
  notThere: 404,
  nothingNamed: 404,
  routeMissing: 404,
  methodWrong: 405,
  notUnique: 409,
  alreadyThere: 409,
  changedMeanwhile: 409,
  superseded: 412,
  bodyTooLarge: 413,
  mediaWrong: 415,
  hostForeign: 421,
  originForeign: 403,
  versionMissing: 428,
  labBusy: 503,
  labUnreachable: 503,
  diskFull: 507,
  fault: 500,
}

const titles: Readonly<Record<number, string>> = {
  400: 'The request cannot be used as it is',
  403: 'Refused',
  404: 'Not there',
  405: 'Not this way',
  409: 'In conflict with what is there',
  412: 'Somebody wrote in between',
  413: 'Too large',
  415: 'Not of this kind',
  421: 'Not this server',
  422: 'The input cannot be used as it is',
  428: 'A version is missing',
  500: 'A fault of ours',
  503: 'Not just now',
  507: 'The disk is full',
}

/** Status of an answer that says these problems: that of the first. */
const statusOf = ([first]: readonly Problem[]): number =>
  statuses[first?.kind ?? 'fault'] ?? { wrongUse: 400, badInput: 422, store: 500 }[first?.class ?? 'store']

/** Problems as RFC 9457 wants them. */
export function problemDetailsOf(problems: readonly Problem[]): ProblemDetails {
  const status = statusOf(problems)
  const [first] = problems
  return {
    type: `/api#problem-${first?.kind ?? 'fault'}`,
    title: titles[status] ?? 'Refused',
    status,
    detail: first === undefined ? '' : `${first.what} ${first.mend}`,
    problems: problems.map(({ kind, class: group, place, what, mend }) => ({ kind, class: group, place, what, mend })),
  }
}

/** The answer that says them; `current` of a 412 is the paper as it stands. */
export function problemAnswer(problems: readonly Problem[], current?: unknown): Response {
  const details = problemDetailsOf(problems)
  const body = current === undefined ? details : { ...details, current }
  return new Response(JSON.stringify(body), {
    status: details.status,
    headers: {
      'content-type': 'application/problem+json',
      'cache-control': 'no-store',
      // The rest of what is too large is not waited for.
      ...(details.status === 413 ? { connection: 'close' } : {}),
    },
  })
}
