import type { ServerDesk } from '../desk.ts'

/** Keeps an upload as it was marked, as a job. When all is done the upload goes; where something stands in the way it stays. */
export function beginKeeping({ uploads, pool, jobs, closing }: ServerDesk, id: string): string {
  const what = `keep ${id}`
  // Asked twice, it is done once.
  const running = jobs.running(what)
  if (running !== undefined) return running
  return jobs.begin(what, async (progress, stop) => {
    const upload = uploads.get(id)
    if (!upload.ok) return { stopped: false, outcome: upload }
    const { name, keeping } = upload.value
    if (keeping === null) return { stopped: true }
    const end = await pool.run('keep', { file: uploads.file(id), name, words: keeping }, { progress, stop })
    if (!end.stopped && end.outcome.ok) uploads.drop(id)
    // A server that closes leaves the mark, and goes on with it at its next start.
    else if (!closing.aborted) uploads.mark(id, null)
    return end
  })
}

/** Goes on with what a server that was stopped or killed had begun to keep. */
export function resumeKeeping(desk: ServerDesk): void {
  for (const { id, keeping } of desk.uploads.list()) if (keeping !== null) beginKeeping(desk, id)
}
