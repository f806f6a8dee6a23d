import { lettering, sizes } from '../lettering.ts'
import type { Block, Sheet } from '../sheet.ts'
import { signMark } from '../signs.ts'
import { fitted } from '../textWidth.ts'
import type { ChartedAlarm, ControlChartData } from './controlChartData.ts'

/** Alarms with the letters under which they are shown. */
export const alarmLetters = (alarms: readonly ChartedAlarm[]) =>
  alarms.map((alarm, i) => ({ alarm, letter: 'abcdefghijklmnopqrstuvwxyz'.charAt(i % 26) }))

/** What each letter on the chart means, one a line. */
export function alarmKey(
  { alarms, values }: ControlChartData,
  at: { readonly left: number; readonly top: number },
  { palette, width }: Sheet,
): Block {
  if (alarms.length === 0) {
    const words = lettering('no alarms', { x: at.left, y: at.top + 10, fill: palette.quiet, size: sizes.small })
    return { markup: words, height: 20 }
  }
  const lines = alarmLetters(alarms).map(({ alarm, letter }, i) => {
    const y = at.top + 6 + 19 * i
    const label = values[alarm.at].label
    const said = `${label}: ${alarm.words}${alarm.state === 'open' ? '' : ' (answered)'}`
    return (
      signMark({ letter, weight: alarm.state === 'open' ? 'stops' : 'note' }, { x: at.left + 8, y }, palette) +
      lettering(fitted(said, sizes.small, width - at.left - 40), {
        x: at.left + 24,
        y: y + 4,
        fill: palette.ink,
        size: sizes.small,
      })
    )
  })
  return { markup: lines.join(''), height: 19 * lines.length + 6 }
}
