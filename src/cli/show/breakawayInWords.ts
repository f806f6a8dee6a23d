import type { BreakawayOfFile } from '../../bench/questions/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import type { Breakaway, PeakCause, Start } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { characterPlot } from './characterPlot.ts'
import { foundRemarks } from './foundRemarks.ts'
import { intervalInWords } from './interval.ts'
import { headLine } from './reductionInWords.ts'
import { type TableColumn, textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

/** Starts from rest for people: a line each, how static friction ages, and with `why` what each peak is. */
export function breakawayInWords({ reduced, breakaway }: BreakawayOfFile, screen: Screen, why: boolean): string {
  const width = Math.min(screen.width, 110)
  const title = (text: string): string => painted(screen, text, 'strong')
  const sections = [
    headLine(reduced, screen),
    `${title('Starts')}   friction and stiffness with 95 % from the own part\n${textTable(columnsOf(breakaway.starts))}`,
    plotOf(breakaway, screen, width),
    `${title('Ageing')}\n${ageingInWords(breakaway, width)}`,
    why
      ? `${title('What the peaks are')}\n${breakaway.starts.map((start) => peakInWords(start, width)).join('\n')}`
      : '',
    foundRemarks(breakaway.remarks, screen, width),
  ]
  return `${sections.filter((section) => section !== '').join('\n\n')}\n`
}

const causeWords: Readonly<Record<PeakCause, string>> = {
  staticFriction: 'static friction',
  windUp: 'wind-up',
  inertia: 'inertia',
  noPeak: 'no peak',
  cannotTell: 'cannot tell',
}

function columnsOf(starts: readonly Start[]): readonly TableColumn[] {
  const column = (head: string, unit: string, cell: (start: Start) => string): TableColumn => ({
    head,
    unit,
    align: 'right',
    cells: starts.map(cell),
  })
  const degrees = (value: number): string => short(value * 1e6)
  return [
    column('step', '', ({ step }) => String(step)),
    column('at rest', 's', ({ dwell }) => short(dwell)),
    column('ramp', 'mN·m/s', ({ torqueRate }) => (Number.isFinite(torqueRate) ? short(torqueRate * 1000) : '–')),
    column('static friction', '', ({ staticFriction, held }) =>
      staticFriction === null ? `over ${short(held)}` : intervalInWords(staticFriction),
    ),
    column('stiffness', 'N·m/rad', ({ stiffness }) => (stiffness === null ? '–' : intervalInWords(stiffness))),
    column('twist', 'µrad', ({ elastic }) => degrees(elastic)),
    column('creep', 'µrad', ({ creep }) => degrees(creep)),
    { head: 'peak is', unit: '', align: 'left', cells: starts.map(({ peak }) => causeWords[peak.cause]) },
  ]
}

const short = (value: number): string => String(Number(value.toPrecision(3)))

function plotOf({ starts, ageing }: Breakaway, screen: Screen, width: number): string {
  const points = starts.flatMap(({ dwell, staticFriction }) =>
    staticFriction === null || !(dwell > 0) ? [] : [{ speed: dwell, friction: staticFriction.value, trusted: true }],
  )
  const dwells = points.map(({ speed }) => speed)
  const [low, high] = [Math.min(...dwells), Math.max(...dwells)]
  const line =
    ageing === null || !(high > low)
      ? []
      : Array.from({ length: 60 }, (_, i) => {
          const speed = low * (high / low) ** (i / 59)
          return { speed, friction: ageing.level.value + ageing.slope.value * Math.log1p(speed / ageing.time.value) }
        })
  const plot = characterPlot(
    { points, line, speedUnit: 's', along: 'time at rest' },
    { width: Math.min(width, 78), rows: 10, unicode: screen.unicode },
  )
  return plot === undefined ? '' : `${painted(screen, 'Static friction', 'strong')}\n${plot}`
}

function ageingInWords({ ageing, ageingMissing }: Breakaway, width: number): string {
  if (ageing === null) return wrap(ageingMissing ?? '', width, { indent: '  ' })
  const law = `µ = µ₀ + β·ln(1 + t/τ): µ₀ ${intervalInWords(ageing.level)}, β ${intervalInWords(ageing.slope)}, τ ${intervalInWords(ageing.time)} s.`
  const scatter =
    ageing.scatter > 0
      ? `From start to start static friction scatters by ${printQuantity(ageing.scatter, 'ratio', { digits: 2, unit: '1' })} beyond its own uncertainty.`
      : ''
  return [ageing.sentence, law, scatter]
    .filter((sentence) => sentence !== '')
    .map((sentence) => wrap(sentence, width, { indent: '  ' }))
    .join('\n')
}

const speaks = { for: '+', against: '-', silent: '?' } as const

function peakInWords({ step, peak }: Start, width: number): string {
  const head = wrap(`Step ${step}: ${peak.sentence}`, width, { indent: '  ' })
  const evidence = peak.evidence.map(({ cause, speaks: way, sentence }) =>
    wrap(`${speaks[way]} ${causeWords[cause]}: ${sentence}`, width, { indent: '     ' }),
  )
  return [head, ...evidence].join('\n')
}
