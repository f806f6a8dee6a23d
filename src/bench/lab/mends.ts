import { done, type MovedWindow, type Outcome } from '../../core/terms/index.ts'
import type { Lab } from '../../store/index.ts'

/** What a paper of mends holds: windows that somebody moved, and remarks that somebody answered with a reason. */
export interface Mends {
  readonly windows: readonly MovedWindow[]
  readonly answers: readonly { readonly kind: string; readonly step: number | null; readonly answer: string }[]
}

/** What a paper of mends says; nothing where it says it otherwise than we write it. */
export function mendsFrom(content: unknown): Mends {
  const said: { windows?: unknown; answers?: unknown } = typeof content === 'object' && content !== null ? content : {}
  const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : [])
  return { windows: orderedWindows(list(said.windows).filter(isWindow)), answers: list(said.answers).filter(isAnswer) }
}

/** Windows of a record as its last paper of mends has them; none without one. */
export async function wantedWindows(lab: Lab, record: string): Promise<Outcome<readonly MovedWindow[]>> {
  const paper = await lab.paper({ subject: 'record', subjectId: record, kind: 'mends' })
  return paper.ok ? done(mendsFrom(paper.value?.content).windows) : paper
}

/** One order, so that the same windows are the same result, whoever moved which first. */
export const orderedWindows = (windows: readonly MovedWindow[]): readonly MovedWindow[] =>
  windows.map(({ step, from, to }) => ({ step, from, to })).sort((a, b) => a.step - b.step || a.from - b.from)

const isWindow = (value: unknown): value is MovedWindow =>
  typeof value === 'object' &&
  value !== null &&
  (['step', 'from', 'to'] as const).every((name) => name in value && Number.isFinite(Reflect.get(value, name)))

const isAnswer = (value: unknown): value is Mends['answers'][number] =>
  typeof value === 'object' && value !== null && 'kind' in value && 'answer' in value
