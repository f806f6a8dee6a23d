import type { UploadMade } from '../../../../server/contract/index.ts'
import { connectionLost, connectionSeen } from '../../../api/connection.ts'
import { Away, Refusal, type SaidProblem } from '../../../api/request.ts'

interface SendOptions {
  readonly study: string
  readonly signal: AbortSignal
  readonly progress: (sent: number, of: number) => void
}

/**
 * Sends a file as it is. By the browser's older way to ask, the only one that tells how much of a long body has gone.
 * Throws Refusal, Away, or the signal's reason.
 */
export function sendFile(file: File, { study, signal, progress }: SendOptions): Promise<UploadMade> {
  return new Promise((resolve, reject) => {
    const asked = new XMLHttpRequest()
    const stop = (): void => asked.abort()
    signal.addEventListener('abort', stop)
    asked.upload.addEventListener('progress', ({ loaded, total }) => progress(loaded, total))
    asked.addEventListener('loadend', () => {
      signal.removeEventListener('abort', stop)
      if (signal.aborted) return reject(signal.reason)
      if (asked.status === 0 || asked.status === 502 || asked.status === 504) {
        connectionLost()
        return reject(new Away('the server does not answer'))
      }
      connectionSeen()
      const answer = asked.response
      if (asked.status < 300) return resolve(answer as UploadMade) // the contract of this route
      reject(new Refusal(problemOf(answer, asked.status)))
    })
    asked.open('POST', `/api/uploads?study=${encodeURIComponent(study)}&name=${encodeURIComponent(file.name)}`)
    asked.responseType = 'json'
    asked.setRequestHeader('content-type', 'application/octet-stream')
    asked.send(file)
  })
}

function problemOf(answer: unknown, status: number): SaidProblem {
  const found = typeof answer === 'object' && answer !== null && 'title' in answer
  return found ? (answer as SaidProblem) : { title: `The server answered ${status}.`, status } // RFC 9457: a title is there
}
