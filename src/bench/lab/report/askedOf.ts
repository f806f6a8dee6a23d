import { done, type Outcome } from '../../../core/terms/index.ts'
import type { Lab } from '../../../store/index.ts'

/** The question that a study was asked, as its title says it; undefined where nobody asked one. */
export async function askedOf(lab: Lab, study: string | null): Promise<Outcome<string | undefined>> {
  if (study === null) return done(undefined)
  const paper = await lab.paper({ subject: 'study', subjectId: study, kind: 'question' })
  if (!paper.ok) return paper
  const content: unknown = paper.value?.content
  const titled = typeof content === 'object' && content !== null && 'title' in content
  return done(titled && typeof content.title === 'string' && content.title.trim() !== '' ? content.title : undefined)
}
