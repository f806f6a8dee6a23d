import type { Comparison, DifferenceStretch, SampleDifference } from '../../core/terms/index.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup } from '../markup.ts'
import type { Stage } from '../stage.ts'
import { textWidth } from '../textWidth.ts'

const stretchLaneHeight = 22

/** What is said of which speeds, as a lane of boxes with words where they fit. Each box reaches half way to the next speed. */
export function stretchLane(
  { difference, speeds }: Pick<Comparison, 'speeds'> & { readonly difference: SampleDifference },
  { top, stage }: { readonly top: number; readonly stage: Stage },
): { readonly markup: Markup; readonly bottom: number } {
  const { plot, palette } = stage
  const merged = mergedStretches(difference.stretches)
  const edge = (speed: number, towards: 1 | -1): number => {
    const next = speeds[speeds.indexOf(speed) + towards]
    if (next === undefined) return towards < 0 ? plot.left : plot.right
    return stage.x(Math.sqrt(speed * next))
  }
  const boxes = merged.map(({ from, to, kind }) => {
    const [left, right] = [edge(from, -1), edge(to, 1)]
    const words = [longWords(kind, difference), shortWords(kind), ''].find(
      (text) => textWidth(text, sizes.small) < right - left - 8,
    )
    return element(
      'g',
      {},
      element('rect', {
        ...{ x: left, y: top, width: right - left, height: stretchLaneHeight },
        fill: kind === 'open' ? 'none' : kind === 'same' ? palette.shade : palette.accent,
        'fill-opacity': kind === 'same' ? 0.25 : palette.bandOpacity + 0.1,
        stroke: palette.hairline,
      }),
      words === undefined || words === ''
        ? ''
        : lettering(words, {
            x: (left + right) / 2,
            y: top + 15,
            fill: palette.ink,
            size: sizes.small,
            anchor: 'middle',
          }),
    )
  })
  return { markup: element('g', {}, ...boxes), bottom: top + stretchLaneHeight + 8 }
}

type Kind = 'lower' | 'higher' | 'same' | 'open'

interface Merged {
  readonly from: number
  to: number
  readonly kind: Kind
}

function mergedStretches(stretches: readonly DifferenceStretch[]): Merged[] {
  const merged: Merged[] = []
  for (const { from, to, verdict, within } of stretches) {
    const kind = verdict === 'open' && within ? 'same' : verdict
    const last = merged.at(-1)
    if (last?.kind === kind) last.to = to
    else merged.push({ from, to, kind })
  }
  return merged
}

function longWords(kind: Kind, { second }: SampleDifference): string {
  if (kind === 'lower') return `${second} slips more easily`
  if (kind === 'higher') return `${second} slips less easily`
  return kind === 'same' ? 'the same for practical purposes' : 'the data cannot tell'
}

const shortWords = (kind: Kind): string => ({ lower: 'lower', higher: 'higher', same: 'same', open: '?' })[kind]
