/** Sends one event; `id` comes back as Last-Event-ID where the page connects again. */
export type Send = (event: string, data: unknown, id?: number) => void

/** A beat that keeps the connection from falling asleep, and finds out that nobody listens any more. ms */
const beatEvery = 15_000

/**
 * An answer that goes on: `begin` gets what sends and what ends it, and gives what is to be done when nobody listens any
 * more.
 */
export function eventStream(
  request: Request,
  closing: AbortSignal,
  begin: (send: Send, close: () => void) => (() => void) | undefined,
): Response {
  const encoder = new TextEncoder()
  let over: () => void = () => {}
  const stream = new ReadableStream<Uint8Array>({
    start(controller) {
      let open = true
      let release: (() => void) | undefined
      const write = (text: string): void => {
        if (open) controller.enqueue(encoder.encode(text))
      }
      const beat = setInterval(() => write(': beat\n\n'), beatEvery)
      over = (): void => {
        if (!open) return
        open = false
        clearInterval(beat)
        release?.()
        for (const signal of [request.signal, closing]) signal.removeEventListener('abort', over)
        try {
          controller.close()
        } catch {
          // The reader has gone already.
        }
      }
      for (const signal of [request.signal, closing]) signal.addEventListener('abort', over)
      write('retry: 1000\n\n')
      release = begin((event, data, id) => {
        const number = id === undefined ? '' : `id: ${id}\n`
        write(`${number}event: ${event}\ndata: ${JSON.stringify(data)}\n\n`)
      }, over)
      if (!open) release?.() // it ended while it began
    },
    cancel: () => over(),
  })
  return new Response(stream, {
    headers: { 'content-type': 'text/event-stream', 'cache-control': 'no-store', 'x-accel-buffering': 'no' },
  })
}
