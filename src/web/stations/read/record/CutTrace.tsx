import { type ReactNode, useMemo } from 'react'
import { stepTraceFigure, stepTracePlot } from '../../../../figure/index.ts'
import type { StepAnswer } from '../../../../server/contract/index.ts'
import { useLook } from '../../../frame/look.ts'
import { Svg } from '../Svg.tsx'
import { type StepWindow, WindowHandles } from '../strip/WindowHandles.tsx'
import { useWidth } from '../useWidth.ts'
import { numbersOf } from './numbersOf.ts'

interface CutTraceProps {
  readonly answer: StepAnswer
  readonly window: StepWindow
  /** What counts now, under a moving hand too. */
  readonly shown: { readonly from: number; readonly to: number }
}

/** The trace of a step with its two edges to drag. */
export function CutTrace({ answer: { step, point, rows, cut }, window, shown }: CutTraceProps): ReactNode {
  const palette = useLook()
  const [place, width] = useWidth(480, 1400)
  const friction = useMemo(() => numbersOf(rows.friction), [rows])
  const { friction: value, low, high } = point
  const still = shown.from === cut.kept && shown.to === cut.end
  const data = {
    title: `Trace of step ${step}`,
    time: rows.time,
    friction,
    keptFrom: shown.from,
    keptTo: shown.to,
    value: still && value !== null && low !== null && high !== null ? { friction: value, low, high } : null,
  }
  const options = { palette, width, id: 'step-trace' }
  const box = stepTracePlot(data, options)
  const [first, last] = [rows.time[0] ?? cut.begin, rows.time.at(-1) ?? cut.end]
  const across = (box.right - box.left) / Math.max(last - first, 1e-9)
  return (
    <div ref={place} className="cut-trace">
      <div className="over-figure" style={{ width }}>
        <Svg markup={stepTraceFigure(data, options)} />
        <WindowHandles
          place={{
            ...box,
            placeOf: (time) => box.left + (time - first) * across,
            timeAt: (x) => first + (x - box.left) / across,
          }}
          window={window}
        />
      </div>
    </div>
  )
}
