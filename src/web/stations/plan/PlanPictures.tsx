import { type ReactNode, useCallback, useMemo } from 'react'
import {
  fixtureFigure,
  frictionWindowFigure,
  loadWindowFigure,
  predictionFigure,
  runInTimeFigure,
} from '../../../figure/index.ts'
import { go, useAddress } from '../../frame/address.ts'
import type { Look } from '../../frame/look.ts'
import { Picture } from '../../pictures/Picture.tsx'
import type { QuestionHold } from '../../question/useQuestion.ts'
import { useKeys } from '../../work/keys.ts'
import { LoadHandles } from './LoadHandles.tsx'
import type { LivePlan } from './livePlan.ts'
import { fixtureData, frictionWindowData, loadWindowData, predictionData, runInTimeData } from './planFigures.ts'
import type { PlanHold } from './usePlan.ts'

interface PlanPicturesProps {
  readonly hold: QuestionHold
  readonly plan: PlanHold
}

/** The live pictures of a plan: window, fixture, predicted curve, run in time. */
export default function PlanPictures({ hold, plan }: PlanPicturesProps): ReactNode {
  const { live, full, sheet } = plan
  if (live === null) return null
  return (
    <div className="pictures">
      <WindowPicture hold={hold} live={live} />
      <FixturePicture live={live} />
      <PredictionPicture live={live} full={full} />
      {sheet !== null && <RunPicture sheet={sheet} />}
    </div>
  )
}

function WindowPicture({ hold, live }: { readonly hold: QuestionHold; readonly live: LivePlan }): ReactNode {
  const { search } = useAddress()
  const byLoad = search.window === 'load'
  const turn = (to: 'load' | null): void => go({ search: { window: to } }, 'replace')
  useKeys('Plan', [{ key: 'w', words: 'the window by friction or by load', press: () => turn(byLoad ? null : 'load') }])
  const data = useMemo(() => (byLoad ? loadWindowData(live) : null), [byLoad, live])
  const draw = useCallback(
    (width: number, palette: Look): string =>
      data === null
        ? frictionWindowFigure(frictionWindowData(live), { width, palette })
        : loadWindowFigure(data, { width, palette }),
    [live, data],
  )
  return (
    <div>
      <p className="switch">
        <button type="button" aria-pressed={!byLoad} onClick={() => turn(null)}>
          speed × friction
        </button>{' '}
        <button type="button" aria-pressed={byLoad} onClick={() => turn('load')}>
          speed × load
        </button>
        {byLoad && <span className="quiet"> drag the line or the ends of the speeds</span>}
      </p>
      <Picture
        draw={draw}
        over={
          data === null
            ? undefined
            : (width, scale) => <LoadHandles hold={hold} live={live} data={data} width={width} scale={scale} />
        }
      />
    </div>
  )
}

function FixturePicture({ live }: { readonly live: LivePlan }): ReactNode {
  const draw = useCallback(
    (width: number, palette: Look): string => fixtureFigure(fixtureData(live), { width, palette, viewHeight: 200 }),
    [live],
  )
  return <Picture draw={draw} least={560} />
}

function PredictionPicture({ live, full }: { readonly live: LivePlan; readonly full: PlanHold['full'] }): ReactNode {
  const draw = useCallback(
    (width: number, palette: Look): string => predictionFigure(predictionData(live, full), { width, palette }),
    [live, full],
  )
  return <Picture draw={draw} />
}

function RunPicture({ sheet }: { readonly sheet: NonNullable<PlanHold['sheet']> }): ReactNode {
  const draw = useCallback(
    (width: number, palette: Look): string => runInTimeFigure(runInTimeData(sheet), { width, palette }),
    [sheet],
  )
  return <Picture draw={draw} />
}
