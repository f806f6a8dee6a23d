import type { RecordStretch } from '../../../../core/terms/index.ts'
import { type DrawnChannel, type PanelScale, scaleBetween } from '../../../../figure/index.ts'
import { channelRange } from './channelRange.ts'
import type { StripLayout } from './layout.ts'
import type { Tile } from './tile.ts'

/** A panel with its scale; no scale for a channel without a number. */
export interface ScenePanel {
  readonly name: DrawnChannel
  readonly top: number
  readonly bottom: number
  readonly scale: Omit<PanelScale, 'cut'> | undefined
}

/** What stays as it is while a person pans and zooms. */
export interface StripScene {
  readonly layout: StripLayout
  readonly panels: readonly ScenePanel[]
  readonly stretches: readonly RecordStretch[]
}

/** Scales come from the whole record, so that nothing jumps up or down while somebody moves along it. */
export function stripScene(
  layout: StripLayout,
  stretches: readonly RecordStretch[],
  whole: Tile | undefined,
): StripScene {
  const panels = layout.panels.map((panel): ScenePanel => {
    const range = whole === undefined ? undefined : channelRange(whole, panel.name, stretches)
    return { ...panel, scale: range === undefined ? undefined : scaleBetween(range, panel.name, panel) }
  })
  return { layout, panels, stretches }
}
