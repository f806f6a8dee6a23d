import { type ReactNode, useCallback } from 'react'
import { fixtureOutline } from '../../../core/fixture/index.ts'
import type { FixtureSpec } from '../../../core/terms/index.ts'
import { fixtureFigure } from '../../../figure/index.ts'
import type { SetupsAnswer } from '../../../server/contract/index.ts'
import { useKept } from '../../api/kept.ts'
import type { Look } from '../../frame/look.ts'
import { Waiting } from '../../frame/Waiting.tsx'
import { Picture } from '../../pictures/Picture.tsx'

/** Fixtures that records were measured with, drawn to scale. */
export function FixturesPart(): ReactNode {
  const { value } = useKept<SetupsAnswer>('/api/setups')
  if (value === undefined) return <Waiting what="Reading the setups" />
  const used = new Map<string, { readonly fixture: FixtureSpec; readonly records: number }>()
  for (const { setup, records } of value.setups) {
    if (setup === null) continue
    const key = JSON.stringify(setup.fixture)
    used.set(key, { fixture: setup.fixture, records: (used.get(key)?.records ?? 0) + records })
  }
  if (used.size === 0) return <p className="quiet">No fixture yet: one comes with the first setup that is kept.</p>
  return (
    <ul className="drawer-list">
      {[...used].map(([key, { fixture, records }], index) => (
        <li key={key}>
          <Drawn
            fixture={fixture}
            id={`fixture-${index}`}
            title={`${records} ${records === 1 ? 'record' : 'records'}`}
          />
        </li>
      ))}
    </ul>
  )
}

const kindWords: Readonly<Record<FixtureSpec['kind'], string>> = {
  ballsOnPlate: 'Balls on a plate',
  ballOnPlates: 'Ball on plates',
  ballOnBalls: 'Ball on balls',
  ringOnPlate: 'Ring on a plate',
  discOnPlate: 'Disc on a plate',
  pinsOnDisc: 'Pins on a disc',
}

function Drawn({
  fixture,
  id,
  title,
}: {
  readonly fixture: FixtureSpec
  readonly id: string
  readonly title: string
}): ReactNode {
  const draw = useCallback(
    (width: number, palette: Look) => {
      const data = { title: kindWords[fixture.kind], caption: title, outline: fixtureOutline(fixture) }
      return fixtureFigure(data, { palette, width, id, viewHeight: 140 })
    },
    [fixture, id, title],
  )
  return <Picture draw={draw} />
}
