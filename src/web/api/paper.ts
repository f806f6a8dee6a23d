import { onChange, onReturn } from './connection.ts'
import type { Paper, PaperState } from './paperState.ts'
import { Away, Refusal, request } from './request.ts'
import { forgetUnsaved, keepUnsaved, readUnsaved } from './unsaved.ts'
import { writer } from './writer.ts'

/** Pause in typing or dragging after which a change is sent. */
const pause = 500

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

/**
 * One paper in this tab: reads it, takes changes, keeps them in the browser until the server has them, and notices when
 * somebody else wrote. Components use `usePaper`.
 */
export class PaperDesk<T> {
  private state: PaperState<T> = {
    phase: 'reading',
    content: null,
    version: 0,
    theirs: null,
    takenFrom: null,
    refusal: undefined,
  }
  private kept: T | null = null
  private why = ''
  private timer: ReturnType<typeof setTimeout> | undefined
  private readonly listeners = new Set<() => void>()
  readonly path: string

  constructor(path: string) {
    this.path = path
    void this.read()
    onReturn(() => void (this.state.phase === 'waiting' ? this.send() : this.read()))
    onChange(() => void this.read())
  }

  readonly listen = (listener: () => void): (() => void) => {
    this.listeners.add(listener)
    return () => this.listeners.delete(listener)
  }

  readonly now = (): PaperState<T> => this.state

  /** Takes a change, kept in the browser at once and by the server after a short pause. */
  readonly edit = (content: T, why = ''): void => {
    this.why = why
    keepUnsaved(this.path, { content, after: this.state.version, why })
    this.put({ content, phase: this.state.phase === 'superseded' ? 'superseded' : 'unsaved' })
    if (this.state.phase !== 'superseded') this.later()
  }

  /** Gives up what was typed here for the newer version. */
  readonly takeTheirs = (): void => {
    const { theirs } = this.state
    if (theirs === null) return
    forgetUnsaved(this.path)
    this.settle(theirs, null)
  }

  /** Knowingly writes what stands here over the newer version; that one stays in the history. */
  readonly writeOver = (): void => {
    const { theirs, content } = this.state
    if (theirs === null || content === null) return
    this.put({ version: theirs.version, theirs: null, phase: 'unsaved' })
    keepUnsaved(this.path, { content, after: theirs.version, why: this.why })
    void this.send()
  }

  /** The notice of a newer version has been read. */
  readonly seen = (): void => this.put({ takenFrom: null })

  private put(change: Partial<PaperState<T>>): void {
    this.state = { ...this.state, ...change }
    for (const listener of this.listeners) listener()
  }

  private settle(paper: Paper<T>, takenFrom: Paper<T> | null): void {
    this.kept = paper.content
    const { content, version } = paper
    this.put({ phase: 'kept', content, version, theirs: null, takenFrom, refusal: undefined })
  }

  private async read(): Promise<void> {
    if (this.state.phase === 'saving') return
    let paper: Paper<T>
    try {
      paper = await request<Paper<T>>(this.path)
    } catch (error) {
      if (error instanceof Away) return this.readAlone()
      if (!(error instanceof Refusal)) throw error
      if (error.problem.status !== 404) return this.put({ refusal: error })
      paper = { version: 0, content: null as T, by: '', why: '', at: '' } // no version yet: null stands for no paper
    }
    this.compare(paper)
  }

  /** The server is away: what was typed before is here all the same. */
  private readAlone(): void {
    const unsaved = readUnsaved(this.path)
    if (this.state.phase !== 'reading' || unsaved === undefined) return
    this.why = unsaved.why
    this.put({ phase: 'waiting', content: unsaved.content as T, version: unsaved.after })
  }

  private compare(paper: Paper<T>): void {
    const { phase, version } = this.state
    if (phase === 'saving') return
    if (phase === 'reading') {
      const unsaved = readUnsaved(this.path)
      if (unsaved === undefined || same(unsaved.content, paper.content)) {
        forgetUnsaved(this.path)
        return this.settle(paper, null)
      }
      this.why = unsaved.why
      const current = unsaved.after === paper.version
      this.put({ content: unsaved.content as T, version: unsaved.after, phase: current ? 'unsaved' : 'superseded' })
      if (current) return this.later()
      return this.put({ theirs: paper })
    }
    if (paper.version <= version) return
    if (phase === 'kept') return this.settle(paper, same(paper.content, this.kept) ? null : paper)
    this.put({ phase: 'superseded', theirs: paper })
  }

  private later(): void {
    clearTimeout(this.timer)
    this.timer = setTimeout(() => void this.send(), pause)
  }

  private async send(): Promise<void> {
    clearTimeout(this.timer)
    if (this.state.phase === 'saving') return this.later()
    const { content, version } = this.state
    this.put({ phase: 'saving', refusal: undefined })
    try {
      const paper = await request<Paper<T>>(this.path, {
        method: 'PUT',
        headers: { 'if-match': `"${version}"` },
        body: { content, by: writer(), why: this.why },
      })
      this.sent(content, paper)
    } catch (error) {
      this.notSent(error)
    }
  }

  private sent(content: T | null, paper: Paper<T>): void {
    this.kept = content
    if (same(this.state.content, content)) {
      forgetUnsaved(this.path)
      return this.put({ phase: 'kept', version: paper.version })
    }
    // Typed on while it was under way.
    keepUnsaved(this.path, { content: this.state.content, after: paper.version, why: this.why })
    this.put({ phase: 'unsaved', version: paper.version })
    this.later()
  }

  private notSent(error: unknown): void {
    if (error instanceof Away) return this.put({ phase: 'waiting' })
    if (!(error instanceof Refusal)) {
      this.put({ phase: 'waiting' })
      throw error
    }
    const current = error.problem.current as Paper<T> | undefined // the contract of 412
    if (error.problem.status === 412 && current !== undefined) {
      return this.put({ phase: 'superseded', theirs: current })
    }
    this.put({ phase: 'refused', refusal: error })
  }
}
