import { availableParallelism } from 'node:os'
import type { LabCall } from '../bench/lab/index.ts'
import { holdLab, UploadArea } from '../bench/serve/index.ts'
import { done, type Outcome, type Outside } from '../core/terms/index.ts'
import { appOf } from './app.ts'
import { JobBoard } from './jobs/jobBoard.ts'
import { resumeKeeping } from './jobs/keepJob.ts'
import { listen } from './listen.ts'
import { ColumnShelf } from './threads/columnShelf.ts'
import { TaskPool } from './threads/taskPool.ts'

/** What a server is started with. */
export interface ServerArgs {
  /** The lab, and who serves it. */
  readonly call: LabCall
  /** 0 for a free one. */
  readonly port: number
  /** Folder of the built page. */
  readonly page: string
  /** Threads for jobs; those of the machine, but for one, where it is left out. */
  readonly threads?: number
  /** Largest file that is taken, bytes; 2 GiB where it is left out. */
  readonly largestUpload?: number
  readonly onFault: (error: unknown) => void
}

/** A server that runs. */
export interface Running {
  /** Address of the bench. */
  readonly address: string
  readonly port: number
  /** Ends what runs: running answers are sent, jobs stop, the lab is closed. */
  close(): Promise<void>
}

/** Opens a lab and serves the bench on it, on the loopback addresses alone. */
export async function startServer(args: ServerArgs, outside: Outside): Promise<Outcome<Running>> {
  const { call, page, onFault, threads = Math.max(1, availableParallelism() - 1) } = args
  const held = await holdLab(call, outside)
  if (!held.ok) return held
  const pool = new TaskPool(call, { program: outside.program, threads })
  const jobs = new JobBoard(onFault)
  const closing = new AbortController()
  const uploads = new UploadArea(held.value.lab, args.largestUpload)
  const columns = new ColumnShelf(pool)
  const desk = { held: held.value, pool, jobs, uploads, columns, closing: closing.signal }
  let port = args.port
  const app = appOf({ desk, page, port: () => port, onFault })
  const letGo = async (): Promise<void> => {
    closing.abort()
    await jobs.close()
    await pool.close()
    uploads.leave()
    await held.value.close()
  }
  const listening = await listen((request) => app.fetch(request), args.port)
  if (!listening.ok) {
    await letGo()
    return listening
  }
  port = listening.value.port
  uploads.tidy(outside.now())
  resumeKeeping(desk)
  return done({
    address: `http://localhost:${port}/`,
    port,
    close: async () => {
      closing.abort()
      await listening.value.close()
      await letGo()
    },
  })
}
