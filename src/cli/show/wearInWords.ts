import type { WearOfFile } from '../../bench/wear/index.ts'
import { fromSi, printQuantity, unitNamed } from '../../core/quantity/index.ts'
import { type PressureStep, type Scar, volumeInWords } from '../../core/reduce/questions/index.ts'
import { type Interval, remarkWords } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { characterPlot } from './characterPlot.ts'
import { headLine } from './reductionInWords.ts'
import { type TableColumn, textTable } from './textTable.ts'
import { weightSigns } from './weightSigns.ts'
import { wrap } from './wrap.ts'

/** Wear for people: scars, pressure step by step, what it means, remarks. */
export function wearInWords({ reduced, wear, grooves, taken }: WearOfFile, screen: Screen): string {
  const width = Math.min(screen.width, 110)
  const title = (text: string): string => painted(screen, text, 'strong')
  const say = (text: string): string => wrap(text, width, { indent: '  ' })
  const { balls, pressure, remarks } = wear
  const plot = pressurePlot(pressure, { width: Math.min(width, 78), unicode: screen.unicode })
  const sections = [
    headLine(reduced, screen),
    balls === null ? '' : `${title('Scars')}\n${scarTable(balls.scars)}`,
    grooves.length === 0 ? '' : `${title('Profiles')}\n${grooveTable(grooves)}`,
    pressure.length === 0
      ? ''
      : `${title('Pressure')}   if wear goes with load and distance\n${pressureTable(pressure)}`,
    plot === undefined ? '' : `${title('Mean pressure (MPa)')}\n${plot}`,
    `${title('Wear')}\n${wear.sentences.map(say).join('\n')}`,
    taken.length === 0 ? '' : painted(screen, say(`From the tables: ${taken.join(' ')}`), 'quiet'),
    remarks.length === 0
      ? ''
      : `${title('Remarks')}\n${remarks
          .map(({ kind, sentence, next }) => {
            const { words, weight } = remarkWords[kind]
            return `  ${weightSigns[weight]} ${words}\n${wrap(`${sentence} ${next}`, width, { indent: '     ' })}`
          })
          .join('\n')}`,
  ]
  return `${sections.filter((section) => section !== '').join('\n\n')}\n`
}

function scarTable(scars: readonly Scar[]): string {
  const column = (head: string, unit: string, cell: (scar: Scar, i: number) => string): TableColumn => ({
    head,
    unit,
    align: 'right',
    cells: scars.map(cell),
  })
  return textTable([
    column('scar', '', (_, i) => String(i + 1)),
    column('diameter', 'mm', ({ diameter }) => (diameter * 1e3).toFixed(3)),
    column('±', 'mm', ({ uncertainty }) => (1.96 * uncertainty * 1e3).toFixed(3)),
    column('depth', 'µm', ({ depth }) => (depth * 1e6).toPrecision(3)),
    column('volume (95 %)', '', ({ volume }) => volumeInWords(volume)),
  ])
}

function grooveTable(grooves: WearOfFile['grooves']): string {
  const column = (
    head: string,
    unit: string,
    cell: (groove: WearOfFile['grooves'][number]) => string,
  ): TableColumn => ({
    head,
    unit,
    align: 'right',
    cells: grooves.map(cell),
  })
  return textTable([
    { ...column('profile', '', ({ file }) => file), align: 'left' },
    column('gone', 'µm²', ({ area }) => (area * 1e12).toPrecision(4)),
    column('± (standard)', 'µm²', ({ uncertainty }) => (uncertainty * 1e12).toPrecision(2)),
    column('ridges', 'µm²', ({ ridges }) => (ridges * 1e12).toPrecision(2)),
    column('width', 'µm', (groove) => (groove.width * 1e6).toPrecision(3)),
    column('depth', 'µm', ({ depth }) => (depth * 1e6).toPrecision(3)),
  ])
}

function pressureTable(steps: readonly PressureStep[]): string {
  const column = (head: string, unit: string, cell: (step: PressureStep) => string): TableColumn => ({
    head,
    unit,
    align: 'right',
    cells: steps.map(cell),
  })
  const mega = ({ value, low, high }: Interval): string =>
    `${(value / 1e6).toPrecision(3)} (${(low / 1e6).toPrecision(3)} to ${(high / 1e6).toPrecision(3)})`
  const speed = unitNamed('mm/s', 'velocity')
  return textTable([
    column('step', '', ({ step }) => String(step)),
    column('speed', 'mm/s', ({ slidingSpeed }) => String(Number(fromSi(slidingSpeed, speed).toPrecision(4)))),
    column('slid', '', ({ distance }) => printQuantity(distance, 'length', { digits: 3 })),
    column('flat', 'mm', ({ scar }) => (scar.value * 1e3).toPrecision(3)),
    column('mean pressure (95 %)', 'MPa', ({ pressure }) => mega(pressure)),
    { ...column('carried by', '', ({ patch }) => (patch === 'worn' ? 'worn flat' : 'elastic contact')), align: 'left' },
  ])
}

function pressurePlot(
  steps: readonly PressureStep[],
  { width, unicode }: { width: number; unicode: boolean },
): string | undefined {
  const points = steps.map(({ distance, pressure }) => ({
    speed: distance,
    friction: pressure.value / 1e6,
    trusted: true,
  }))
  const line = steps.map(({ distance, pressure }) => ({ speed: distance, friction: pressure.value / 1e6 }))
  return characterPlot({ points, line, speedUnit: 'm', along: 'sliding distance' }, { width, rows: 10, unicode })
}
