import { type KeyboardEvent, type ReactNode, useState } from 'react'
import type { ChannelName, RecordStretch } from '../../../../core/terms/index.ts'
import { channelWords } from '../../../../figure/index.ts'
import { useLook } from '../../../frame/look.ts'
import { onKey } from './onKey.ts'
import type { StripEngine } from './stripEngine.ts'
import { type StripSource, useStrip } from './useStrip.ts'
import { around, span, type View } from './view.ts'
import { type StepWindow, WindowHandles } from './WindowHandles.tsx'

interface StripProps {
  readonly source: StripSource
  readonly names: readonly ChannelName[]
  readonly stretches: readonly RecordStretch[]
  /** Step that is lit. */
  readonly lit: number | null
  readonly light: (step: number) => void
  /** Step that a pointer is over here. */
  readonly hover: (step: number | null) => void
  /** Step that is hovered over elsewhere. */
  readonly hovered: number | null
  /** The stretch in sight, after a hand has moved it. */
  readonly seen: (view: View) => void
  /** Stretch in sight at the beginning; the whole record if undefined. */
  readonly begin?: View
  /** The lit step's window with its two handles; none where it has none. */
  readonly window?: StepWindow
}

/** The raw channels over time: drag to pan, Ctrl and wheel or two fingers to zoom, a press lights a step, arrows move the cursor. */
export function Strip(props: StripProps): ReactNode {
  const { source, names, stretches, lit, light, begin, window, hover, hovered, seen: sight } = props
  const palette = useLook()
  const [cursor, setCursor] = useState<number>(source.whole.from)
  const stepAt = (time: number): number | undefined => stretches.find(({ from, to }) => time >= from && time < to)?.step
  const press = (time: number): void => {
    const step = stepAt(time)
    if (step !== undefined) light(step)
  }
  const { canvas, surface, engine } = useStrip(
    source,
    { names, stretches, palette, lit: hovered ?? lit },
    {
      over: (time) => {
        setCursor(time)
        hover(stepAt(time) ?? null)
      },
      left: () => hover(null),
      pressed: press,
      begin,
      seen: sight,
    },
  )
  const seen = names.flatMap((name) => (name === 'time' || name === 'step' ? [] : [channelWords[name].words]))
  const own = stretches.filter(({ step }) => step === lit)
  return (
    <div className="strip">
      <div className="strip-tools" role="toolbar" aria-label="Zoom of the strip">
        <button type="button" onClick={() => engine?.zoom(0.5)}>
          Closer
        </button>
        <button type="button" onClick={() => engine?.zoom(2)}>
          Farther
        </button>
        <button type="button" onClick={() => engine?.look(source.whole)}>
          Whole record
        </button>
        {own.length > 0 && (
          <button
            type="button"
            onClick={() => engine?.look(around({ from: own[0].from, to: own[own.length - 1].to }, 0.1, engine.limits))}
          >
            Step {lit}
          </button>
        )}
      </div>
      <output className="quiet reading">{engine?.readingAt(cursor) ?? ''}</output>
      <div className="strip-place">
        <canvas ref={canvas} role="img" aria-label={`Raw channels over time: ${seen.join(', ')}`} />
        <div ref={surface} className="strip-surface" />
        {engine !== undefined && <Cursor engine={engine} time={cursor} move={setCursor} choose={press} />}
        {engine !== undefined && window !== undefined && <WindowHandles place={engine.timePlace} window={window} />}
      </div>
    </div>
  )
}

interface CursorProps {
  readonly engine: StripEngine
  readonly time: number
  readonly move: (time: number) => void
  readonly choose: (time: number) => void
}

/** The cursor that all channels share. Arrows move it, with Shift farther; + and − zoom about it, Enter lights its step. */
function Cursor({ engine, time, move, choose }: CursorProps): ReactNode {
  const { whole } = engine.limits
  const to = (next: number): void => {
    const held = Math.min(whole.to, Math.max(whole.from, next))
    move(held)
    const { from, to: end } = engine.view
    if (held < from) engine.pan((held - from) / (end - from) - 0.1)
    if (held > end) engine.pan((held - end) / (end - from) + 0.1)
  }
  const key = (event: KeyboardEvent): void => {
    const far = span(engine.view) / (event.shiftKey ? 20 : 200)
    onKey(event, [
      ['ArrowLeft', () => to(time - far)],
      ['ArrowRight', () => to(time + far)],
      ['PageDown', () => engine.pan(0.5)],
      ['PageUp', () => engine.pan(-0.5)],
      ['Home', () => to(whole.from)],
      ['End', () => to(whole.to)],
      ['+', () => engine.zoom(0.7, time)],
      ['-', () => engine.zoom(1 / 0.7, time)],
      ['0', () => engine.look(whole)],
      ['Enter', () => choose(time)],
    ])
  }
  const x = engine.placeOf(time)
  const { left, right, bottom, lane } = engine.layout
  const style = { left: Math.min(right, Math.max(left, x)), top: lane.top, height: bottom - lane.top }
  return (
    <div
      className="strip-cursor"
      role="slider"
      tabIndex={0}
      aria-label="Time cursor: arrows move it, plus and minus zoom, Enter lights the step"
      aria-valuenow={time}
      aria-valuemin={whole.from}
      aria-valuemax={whole.to}
      aria-valuetext={engine.readingAt(time)}
      style={style}
      onKeyDown={key}
    />
  )
}
