import { type ReactNode, useCallback } from 'react'
import { turnMapFigure } from '../../../../figure/index.ts'
import type { TurnsAnswer } from '../../../../server/contract/index.ts'
import { useKept } from '../../../api/kept.ts'
import { go } from '../../../frame/address.ts'
import type { Look } from '../../../frame/look.ts'
import { Refused } from '../../../frame/Refused.tsx'
import { Waiting } from '../../../frame/Waiting.tsx'
import { Picture } from '../../../pictures/Picture.tsx'
import { Choice } from '../../../sentence/Choice.tsx'
import { numbersOf } from './numbersOf.ts'
import { TurnChangePart } from './TurnChangePart.tsx'

const quantities = [
  { value: 'frictionSwing', words: 'swing of friction' },
  { value: 'friction', words: 'friction' },
  { value: 'axialForce', words: 'axial force' },
  { value: 'gap', words: 'gap' },
] as const

type Quantity = (typeof quantities)[number]['value']

const isQuantity = (text: string | undefined): text is Quantity => quantities.some(({ value }) => value === text)

const views = [
  { value: 'map', words: 'each turn as it was' },
  { value: 'change', words: 'late turns against early ones' },
] as const

interface TurnsPartProps {
  readonly record: string
  /** As the address says. */
  readonly shown: string | undefined
  readonly view: string | undefined
  readonly hasGap: boolean
}

/** The record folded by turns: what repeats every turn stands upright; what changed at one place stands out in the difference. */
export function TurnsPart({ record, shown, view, hasGap }: TurnsPartProps): ReactNode {
  const quantity = isQuantity(shown) ? shown : 'frictionSwing'
  const change = view === 'change'
  return (
    <section className="turns-part" aria-label="Turn map">
      <p>
        Turn by turn:{' '}
        <Choice
          name="What the turn map shows"
          value={quantity}
          options={quantities.filter(({ value: one }) => one !== 'gap' || hasGap)}
          change={(next) => go({ search: { turns: next } }, 'replace')}
        />
        ,{' '}
        <Choice
          name="How the turns are shown"
          value={change ? 'change' : 'map'}
          options={views}
          change={(next) => go({ search: { view: next === 'map' ? null : next } }, 'replace')}
        />
      </p>
      {change ? (
        <TurnChangePart record={record} quantity={quantity} />
      ) : (
        <TurnMap record={record} quantity={quantity} />
      )}
    </section>
  )
}

function TurnMap({ record, quantity }: { readonly record: string; readonly quantity: Quantity }): ReactNode {
  const { value, refusal } = useKept<TurnsAnswer>(`/api/records/${record}/turns?quantity=${quantity}`)
  const draw = useCallback(
    (width: number, palette: Look) => {
      if (value === undefined) return ''
      const { columns, rows, turns, mean, range, steps } = value
      const map = { columns, rows, turns, mean: numbersOf(mean), range }
      const figure = turnMapFigure(
        { title: 'Turn by turn', map, quantity, steps },
        { palette, width, id: 'turns', plotHeight: 240 },
      )
      // The page says the same in its own style; its security policy allows none inline.
      return figure.replace(' style="image-rendering:pixelated"', '')
    },
    [value, quantity],
  )
  if (refusal !== undefined) return <Refused refusal={refusal} />
  return value === undefined ? <Waiting what="Folding the record by turns" /> : <Picture draw={draw} />
}
