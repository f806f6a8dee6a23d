import type { ReactNode } from 'react'
import { Wording } from '../sentence/Wording.tsx'
import type { QuestionHold } from './useQuestion.ts'

interface QuestionWordingProps {
  readonly hold: QuestionHold
  readonly path: string
  readonly name: string
  readonly offers?: () => Promise<readonly string[]>
}

/** Words of the question in a sentence. */
export const QuestionWording = ({ hold, path, name, offers }: QuestionWordingProps): ReactNode => (
  <Wording
    name={name}
    value={hold.text(path) ?? ''}
    assumed={hold.assumed(path)}
    offers={offers}
    change={(text) => hold.setText(path, text)}
  />
)
