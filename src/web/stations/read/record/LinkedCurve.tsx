import { type KeyboardEvent, type ReactNode, useEffect, useMemo, useRef } from 'react'
import { printQuantity } from '../../../../core/quantity/index.ts'
import type { Point } from '../../../../core/terms/index.ts'
import { type CurveFigureData, curveFigure, curvePlaces } from '../../../../figure/index.ts'
import { useLook } from '../../../frame/look.ts'
import { Svg } from '../Svg.tsx'
import { onKey } from '../strip/onKey.ts'
import { useWidth } from '../useWidth.ts'

interface LinkedCurveProps {
  readonly data: CurveFigureData
  readonly lit: number | null
  readonly light: (step: number) => void
  /** Step under the pointer, here or on the strip. */
  readonly hovered: number | null
  readonly hover: (step: number | null) => void
}

/** The curve with a place to press on each point; arrows go from point to point along the steps. */
export function LinkedCurve({ data, lit, light, hovered, hover }: LinkedCurveProps): ReactNode {
  const look = useLook()
  const [place, width] = useWidth(480, 1400)
  const options = useMemo(() => ({ palette: look, width, id: 'curve', plotHeight: 300 }), [look, width])
  const markup = useMemo(() => curveFigure(data, options), [data, options])
  const places = useMemo(() => curvePlaces(data, options), [data, options])
  const height = Number(/ height="([\d.]+)"/.exec(markup)?.[1] ?? 1)
  const chosen = lit ?? data.points[0]?.step ?? null
  return (
    <div ref={place} className="linked-curve">
      <div className="over-figure" style={{ width }}>
        <Svg markup={markup} />
        <div role="listbox" aria-label="Points of the curve" aria-orientation="horizontal" className="curve-points">
          {places.map(({ step, x, y }) => {
            const point = data.points.find((one) => one.step === step)
            if (point === undefined) return null
            const at = { left: `${(100 * x) / width}%`, top: `${(100 * y) / height}%` }
            return (
              <PointPlace
                key={step}
                point={point}
                at={at}
                lit={step === lit}
                first={step === chosen}
                hovered={step === hovered}
                {...{ data, light, hover }}
              />
            )
          })}
        </div>
      </div>
    </div>
  )
}

interface PointPlaceProps extends Pick<LinkedCurveProps, 'data' | 'light' | 'hover'> {
  readonly hovered: boolean
  readonly point: Point
  readonly at: { readonly left: string; readonly top: string }
  readonly lit: boolean
  /** The one that the Tab key reaches. */
  readonly first: boolean
}

function PointPlace({ point, at, lit, first, hovered, data, light, hover }: PointPlaceProps): ReactNode {
  const place = useRef<HTMLDivElement>(null)
  useEffect(() => {
    // The focus goes along with the arrows, but is not taken from elsewhere.
    if (lit && place.current?.parentElement?.contains(document.activeElement)) place.current.focus()
  }, [lit])
  const to = (by: number): void => {
    const index = data.points.findIndex(({ step }) => step === point.step) + by
    const next = data.points[Math.min(data.points.length - 1, Math.max(0, index))]
    if (next !== undefined) light(next.step)
  }
  const key = (event: KeyboardEvent): void =>
    onKey(event, [
      ['ArrowRight', () => to(1)],
      ['ArrowLeft', () => to(-1)],
      ['ArrowDown', () => to(1)],
      ['ArrowUp', () => to(-1)],
      ['Home', () => to(-data.points.length)],
      ['End', () => to(data.points.length)],
      ['Enter', () => light(point.step)],
      [' ', () => light(point.step)],
    ])
  return (
    <div
      ref={place}
      role="option"
      aria-selected={lit}
      tabIndex={first ? 0 : -1}
      aria-label={pointInWords(point)}
      title={pointInWords(point)}
      className={hovered ? 'curve-point hovered' : 'curve-point'}
      style={at}
      onClick={() => light(point.step)}
      onPointerEnter={() => hover(point.step)}
      onPointerLeave={() => hover(null)}
      onKeyDown={key}
    />
  )
}

/** A point in a line, for ear and hint. */
function pointInWords({ step, slidingSpeed, friction, remarks }: Point): string {
  const speed = printQuantity(slidingSpeed, 'velocity', { digits: 3 })
  const value =
    friction === null ? 'no friction value' : `friction ${printQuantity(friction, 'ratio', { digits: 4, unit: '1' })}`
  const said = remarks.length === 0 ? '' : `, ${remarks.length} ${remarks.length === 1 ? 'remark' : 'remarks'}`
  return `Step ${step}: ${speed}, ${value}${said}`
}
