import { onChange, onReturn } from './connection.ts'
import type { Paper, PaperState } from './paperState.ts'
import { Away, Refusal, request } from './request.ts'
import { forgetUnsaved, keepUnsaved, takeUnsaved } from './unsaved.ts'
import { writer } from './writer.ts'

/** Pause in typing or dragging after which a change is sent, ms. */
const pause = 500

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

/**
 * One paper in this tab: reads it, takes changes, keeps them in the browser until the server has them, and notices when
 * somebody else wrote. Components use `usePaper`.
 */
export class PaperDesk<T> {
  readonly path: string
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
    const open = this.state.phase === 'superseded'
    this.put({ content, phase: open ? 'superseded' : 'unsaved' })
    if (!open) this.later()
  }

  /** Gives up what was typed here for the newer version. */
  readonly takeTheirs = (): void => {
    const { theirs } = this.state
    if (theirs !== null) this.settle(theirs, null)
  }

  /** Knowingly writes what stands here over the newer version; that one stays in the history. */
  readonly writeOver = (): void => {
    const { theirs, content } = this.state
    if (theirs === null) return
    this.put({ version: theirs.version, theirs: null, phase: 'unsaved' })
    keepUnsaved(this.path, { content, after: theirs.version, why: this.why })
    void this.send()
  }

  /** Sends once more what was refused. */
  readonly again = (): void => void this.send()

  /** The notice of a newer version has been read. */
  readonly seen = (): void => this.put({ takenFrom: null })

  private put(change: Partial<PaperState<T>>): void {
    this.state = { ...this.state, ...change }
    for (const listener of this.listeners) listener()
  }

  private settle(paper: Paper<T>, takenFrom: Paper<T> | null): void {
    forgetUnsaved(this.path)
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
      if (error instanceof Away) await this.readAlone()
      else if (!(error instanceof Refusal)) throw error
      else if (error.problem.status === 404)
        await this.compare(noPaper as Paper<T>) // null stands for no paper
      else this.put({ refusal: error })
      return
    }
    await this.compare(paper)
  }

  /** The server is away: what was typed before is here all the same. */
  private async readAlone(): Promise<void> {
    const unsaved = await takeUnsaved(this.path)
    if (this.state.phase !== 'reading' || unsaved === undefined) return
    this.why = unsaved.why
    this.put({ phase: 'waiting', content: unsaved.content as T, version: unsaved.after })
  }

  private async compare(paper: Paper<T>): Promise<void> {
    if (this.state.phase === 'reading') await this.begin(paper)
    const { phase, version } = this.state
    if (phase === 'saving' || phase === 'reading' || paper.version <= version) return
    if (phase === 'kept') this.settle(paper, same(paper.content, this.kept) ? null : paper)
    else this.put({ phase: 'superseded', theirs: paper })
  }

  /** The first reading: takes up what was left unsaved. */
  private async begin(paper: Paper<T>): Promise<void> {
    const unsaved = await takeUnsaved(this.path)
    if (this.state.phase !== 'reading') return
    if (unsaved === undefined || same(unsaved.content, paper.content)) {
      this.settle(paper, null)
      return
    }
    this.why = unsaved.why
    this.kept = paper.content
    this.put({ content: unsaved.content as T, version: unsaved.after, phase: 'unsaved' })
    if (unsaved.after === paper.version) this.later()
  }

  private later(): void {
    clearTimeout(this.timer)
    this.timer = setTimeout(() => void this.send(), pause)
  }

  private async send(): Promise<void> {
    clearTimeout(this.timer)
    if (this.state.phase === 'saving') {
      this.later()
      return
    }
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
      this.put({ phase: 'kept', version: paper.version })
      return
    }
    // Typed on while it was under way.
    keepUnsaved(this.path, { content: this.state.content, after: paper.version, why: this.why })
    this.put({ phase: 'unsaved', version: paper.version })
    this.later()
  }

  private notSent(error: unknown): void {
    if (!(error instanceof Refusal)) {
      this.put({ phase: 'waiting' })
      if (!(error instanceof Away)) throw error
      return
    }
    const current = error.problem.current as Paper<T> | undefined // the contract of 412
    if (error.problem.status === 412 && current) this.put({ phase: 'superseded', theirs: current })
    else this.put({ phase: 'refused', refusal: error })
  }
}

/** Stands where no version has been kept yet. */
const noPaper: Paper<unknown> = { version: 0, content: null, by: '', why: '', at: '' }
