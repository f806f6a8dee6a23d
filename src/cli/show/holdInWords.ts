import type { HoldOfFile, HoldsOfFiles, Lives } from '../../bench/questions/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import type { Hold, HoldLaw, HoldQuantity } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { characterPlot } from './characterPlot.ts'
import { foundRemarks } from './foundRemarks.ts'
import { intervalInWords } from './interval.ts'
import { headLine } from './reductionInWords.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

/** Holds for people: each with its law and verdicts, then the lives of all. */
export function holdInWords({ holds, lives }: HoldsOfFiles, screen: Screen): string {
  const sections = holds.map((hold) => oneHold(hold, screen))
  return `${[...sections, ...(lives === null ? [] : [livesInWords(lives, screen)])].join('\n\n')}\n`
}

const lawWords: Readonly<Record<HoldLaw, string>> = {
  level: 'one level',
  drift: 'a straight drift',
  runIn: 'running-in, one length',
  twoStage: 'running-in, two lengths',
  failure: 'a level, a rise, another level',
}

const quantityWords: Readonly<Record<HoldQuantity['name'], string>> = {
  steady: 'steady friction',
  excess: 'excess at the beginning',
  length: 'running-in length',
  slowExcess: 'slow excess',
  slowLength: 'slow length',
  slope: 'slope',
  before: 'friction at the beginning',
  after: 'friction after the rise',
  onset: 'onset of the rise',
  width: 'width of the rise',
}

function oneHold({ reduced, hold }: HoldOfFile, screen: Screen): string {
  const width = Math.min(screen.width, 110)
  const title = (text: string): string => painted(screen, text, 'strong')
  const say = (text: string): string => wrap(text, width, { indent: '  ' })
  const sections = [
    headLine(reduced, screen),
    `${title('Held')}\n${say(heldInBrief(hold))}`,
    plotOf(hold, screen, width),
    `${title('Law')}   ${lawWords[hold.law]}, 95 % from the own part\n${quantityTable(hold)}\n${say(choicesInWords(hold))}`,
    `${title('Answers')}\n${answersOf(hold).map(say).join('\n')}`,
    foundRemarks(hold.remarks, screen, width),
  ]
  return sections.filter((section) => section !== '').join('\n\n')
}

function heldInBrief({ slidingSpeed, axialForce, from, to, duration, turns, blocks, rowsPerBlock }: Hold): string {
  const metres = (value: number): string => printQuantity(value, 'length', { digits: 3 })
  return `${printQuantity(slidingSpeed, 'velocity', { digits: 3 })} at ${printQuantity(axialForce, 'force', { digits: 3 })}, from ${metres(from)} to ${metres(to)} (${printQuantity(duration, 'time', { digits: 3 })}, ${short(turns)} turns), in ${blocks.length} blocks of ${rowsPerBlock} ${rowsPerBlock === 1 ? 'row' : 'rows'}.`
}

const short = (value: number): string => String(Number(value.toPrecision(3)))

function plotOf({ blocks, fitted }: Hold, screen: Screen, width: number): string {
  const stride = Math.max(1, Math.floor(blocks.length / 60))
  const plot = characterPlot(
    {
      points: blocks
        .filter((_, i) => i % stride === 0)
        .map(({ distance, friction }) => ({ speed: distance, friction, trusted: true })),
      line: fitted.map((friction, i) => ({ speed: blocks[i].distance, friction })),
      speedUnit: 'm',
      along: 'distance slid',
    },
    { width: Math.min(width, 78), rows: 12, unicode: screen.unicode },
  )
  return plot === undefined ? '' : `${painted(screen, 'Friction coefficient', 'strong')}\n${plot}`
}

const quantityTable = ({ quantities }: Hold): string =>
  textTable([
    { head: 'quantity', unit: '', align: 'left', cells: quantities.map(({ name }) => quantityWords[name]) },
    { head: 'value (95 %)', unit: '', align: 'right', cells: quantities.map((quantity) => intervalInWords(quantity)) },
    { head: 'unit', unit: '', align: 'left', cells: quantities.map(({ unit }) => unit) },
  ])

const choicesInWords = ({ choices, noiseCorrelation }: Hold): string =>
  `Weights by AICc: ${choices.map(({ law, weight }) => `${lawWords[law]} ${weight.toFixed(2)}`).join(', ')}. The simplest within 2 of the best is taken; noise from block to block is correlated by ${noiseCorrelation.toFixed(2)}.`

function answersOf({ late, steadyFrom, steadyShare, runIn, early, hump, life, gapCreep }: Hold): string[] {
  const percent = (value: number): string => printQuantity(value, 'ratio', { digits: 2, unit: '%' })
  const steady =
    steadyFrom === null
      ? 'Friction does not come to a steady value within the record.'
      : `Within ${percent(steadyShare)} of its steady value from ${intervalInWords(steadyFrom)} m on.`
  return [
    `Friction over the last third: ${intervalInWords(late)}.`,
    steady,
    runIn.sentence,
    `The first third lies ${percent(Math.abs(early.value))} ${early.value < 0 ? 'under' : 'over'} the last (95 % from ${percent(early.low ?? Number.NaN)} to ${percent(early.high ?? Number.NaN)}).`,
    hump === null
      ? ''
      : `A hump of ${percent(hump.height.value)} stands at ${printQuantity(hump.at, 'length', { digits: 3 })}: friction rose and fell again early on.`,
    life?.sentence ?? '',
    gapCreep === null ? '' : `The gap changed by ${intervalInWords(gapCreep, 1e6)} µm per metre slid.`,
  ].filter((sentence) => sentence !== '')
}

function livesInWords({ failures, censored, weibull }: Lives, screen: Screen): string {
  const title = painted(screen, 'Lives', 'strong')
  const width = Math.min(screen.width, 110)
  const counted = `${failures} passed the threshold, ${censored} lasted and count as longer.`
  if (weibull === null) {
    return `${title}\n${wrap(`${counted} A Weibull law needs two different lives that ended.`, width, { indent: '  ' })}`
  }
  const rows = [
    ['shape', weibull.shape, ''],
    ['scale (63 % have failed)', weibull.scale, 'm'],
    ...weibull.quantiles.map(({ share, life }) => [`${short(100 * share)} % have failed`, life, 'm'] as const),
  ] as const
  const table = textTable([
    { head: 'Weibull law', unit: '', align: 'left', cells: rows.map(([name]) => name) },
    { head: 'value (95 %)', unit: '', align: 'right', cells: rows.map(([, value]) => intervalInWords(value)) },
    { head: 'unit', unit: '', align: 'left', cells: rows.map(([, , unit]) => unit) },
  ])
  return `${title}\n${wrap(counted, width, { indent: '  ' })}\n${table}`
}
