import type { LoopOfFile } from '../../bench/questions/index.ts'
import { fromSi, printQuantity, printWithUncertainty } from '../../core/quantity/index.ts'
import type { Loop, LoopCause, LoopCauseFound } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { characterPlot } from './characterPlot.ts'
import { foundRemarks } from './foundRemarks.ts'
import { speedUnitOf } from './pointTable.ts'
import { headLine } from './reductionInWords.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

const causeWords: Readonly<Record<LoopCause, string>> = {
  runningIn: 'running-in',
  heating: 'heating',
  thixotropy: 'thixotropy, or a liquid that changed',
  filmBuildUp: 'a film that builds up',
  starvation: 'starvation',
  wear: 'wear',
  forceDrift: 'drift of the force zero',
  partialTurns: 'partial turns',
  speedLag: 'speed that lags',
}

/** The loop for people: both ways at each speed, the difference, the verdict, and with `why` the causes. */
export function loopInWords({ reduced, loop }: LoopOfFile, screen: Screen, why: boolean): string {
  const width = Math.min(screen.width, 110)
  const unit = speedUnitOf(reduced.reduction.points)
  const title = (text: string): string => painted(screen, text, 'strong')
  const { pairs } = loop
  const half = ({ difference }: Loop['pairs'][number]): number => (difference.high ?? 0) - difference.value
  const table = textTable([
    {
      head: 'speed',
      unit: unit.text,
      align: 'point',
      cells: pairs.map((pair) => short(fromSi(pair.slidingSpeed, unit), 4)),
    },
    { head: 'up', unit: '', align: 'point', cells: pairs.map(({ frictionUp }) => short(frictionUp, 5)) },
    { head: 'down', unit: '', align: 'point', cells: pairs.map(({ frictionDown }) => short(frictionDown, 5)) },
    {
      head: 'up less down',
      unit: '',
      align: 'point',
      cells: pairs.map((pair) => printWithUncertainty(pair.difference.value, half(pair))),
    },
    { head: 'shared', unit: '', align: 'right', cells: pairs.map(({ shared }) => short(shared, 2)) },
    { head: 'p', unit: '', align: 'right', cells: pairs.map(({ p }) => (p < 0.001 ? '< 0.001' : p.toFixed(3))) },
  ])
  const sections = [
    headLine(reduced, screen),
    `${title('Pairs')}   ± is the own 95 %; p is adjusted for ${pairs.length} speeds (Holm)\n${table}`,
    plotOf(loop, unit, screen),
    `${title('Loop')}\n${answersOf(loop)
      .map((text) => wrap(text, width, { indent: '  ' }))
      .join('\n')}`,
    why ? `${title('Why')}\n${causesInWords(loop, screen, width)}` : '',
    foundRemarks(loop.remarks, screen, width),
  ]
  return `${sections.filter((section) => section !== '').join('\n\n')}\n`
}

const short = (value: number, digits: number): string => String(Number(value.toPrecision(digits)))

/** `o` up, `x` down. */
function plotOf({ pairs }: Loop, unit: ReturnType<typeof speedUnitOf>, screen: Screen): string {
  const points = pairs.flatMap(({ slidingSpeed, frictionUp, frictionDown }) => {
    const speed = fromSi(slidingSpeed, unit)
    return [
      { speed, friction: frictionUp, trusted: true },
      { speed, friction: frictionDown, trusted: false },
    ]
  })
  const plot = characterPlot(
    { points, line: [], speedUnit: unit.text },
    { width: Math.min(screen.width, 78), rows: 12, unicode: screen.unicode },
  )
  return plot === undefined ? '' : `${painted(screen, 'Friction coefficient', 'strong')}   o up   x down\n${plot}`
}

function answersOf({ sentence, area, heightShared, between }: Loop): string[] {
  return [
    sentence,
    `Area ∫(up − down) d ln v: ${printWithUncertainty(area.value, (area.high ?? area.value) - area.value)} (95 %).`,
    `What both ways share and does not cancel moves the mean difference by ${short(heightShared, 2)}.`,
    `The slowest speed was visited twice, ${printQuantity(between, 'time', { digits: 3 })} apart.`,
  ]
}

function causesInWords({ causes, verdict }: Loop, screen: Screen, width: number): string {
  if (causes.length === 0) {
    return wrap(
      verdict === 'none'
        ? 'There is no loop that would need a cause.'
        : 'The loop is not told from nothing, so no cause is looked for.',
      width,
      { indent: '  ' },
    )
  }
  return causes.map((cause, i) => causeInWords(cause, i + 1, { screen, width })).join('\n')
}

const verdictWords = {
  likely: 'likely',
  possible: 'possible',
  unlikely: 'unlikely',
  cannotTell: 'cannot tell',
} as const

function causeInWords(
  found: LoopCauseFound,
  place: number,
  { screen, width }: { screen: Screen; width: number },
): string {
  const head = `  ${place}. ${causeWords[found.cause]}: ${verdictWords[found.verdict]}`
  const line = (sign: string, text: string): string => wrap(`${sign} ${text}`, width, { indent: '     ' })
  return [
    painted(screen, head, found.verdict === 'likely' ? 'accent' : 'strong'),
    ...found.for.map((text) => line('+', text)),
    ...found.against.map((text) => line('-', text)),
    line('Test:', found.test),
  ].join('\n')
}
