import type { ReactNode } from 'react'
import type { TurnChangeAnswer } from '../../../../server/contract/index.ts'
import { useKept } from '../../../api/kept.ts'
import { Refused } from '../../../frame/Refused.tsx'
import { Waiting } from '../../../frame/Waiting.tsx'
import { DrawnPicture } from './DrawnPicture.tsx'

interface TurnChangePartProps {
  readonly record: string
  readonly quantity: string
}

/** Late turns less early ones: the sentence first, then the profiles and the map. */
export function TurnChangePart({ record, quantity }: TurnChangePartProps): ReactNode {
  const { value, refusal } = useKept<TurnChangeAnswer>(`/api/records/${record}/turn-change?quantity=${quantity}`)
  if (refusal !== undefined) return <Refused refusal={refusal} />
  if (value === undefined) return <Waiting what="Comparing late turns with early ones" />
  return (
    <>
      {value.sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {value.pictures.map((picture) => (
        <DrawnPicture key={picture.caption} picture={picture} />
      ))}
    </>
  )
}
