import type { JudgedRound, RoundSpeed } from '../../bench/decide/round/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import { painted, type Screen } from '../screen.ts'
import { printable } from './printable.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

type Test = RoundSpeed['consistency']['tests'][number]

const testWords: Readonly<Record<Test['test'], string>> = {
  cochran: 'scatter (Cochran)',
  grubbsHigh: 'highest mean (Grubbs)',
  grubbsLow: 'lowest mean (Grubbs)',
  grubbsPairHigh: 'two highest means (Grubbs)',
  grubbsPairLow: 'two lowest means (Grubbs)',
}

/** Precision over the speeds, and who stands out. */
export function roundInWords(round: JudgedRound, screen: Screen): string {
  const { laboratories, replicates, speeds, without } = round
  const width = Math.min(screen.width, 100)
  const head = painted(screen, `Round of ${laboratories.length} laboratories, ${resultsEach(replicates)}`, 'strong')
  const out = without.map(({ laboratory, why }) => `Without ${printable(laboratory)}: ${printable(why)}.\n`).join('')
  const number = (value: number, digits = 4): string => String(Number(value.toPrecision(digits)))
  const cells = (of: (speed: RoundSpeed) => string): string[] => speeds.map(of)
  const share = (of: (speed: RoundSpeed) => number): string[] =>
    cells((speed) => ((100 * of(speed)) / speed.precision.mean).toFixed(1))
  const table = textTable([
    { head: 'speed', unit: 'mm/s', align: 'point', cells: cells(({ slidingSpeed }) => number(1000 * slidingSpeed)) },
    { head: 'mean', unit: '', align: 'point', cells: cells(({ precision }) => number(precision.mean)) },
    { head: 'robust', unit: '', align: 'point', cells: cells(({ robust }) => number(robust.means.mean)) },
    { head: 's_r', unit: '%', align: 'point', cells: share(({ precision }) => precision.repeatability) },
    {
      head: 'robust',
      unit: '%',
      align: 'point',
      cells: cells(({ robust, precision }) =>
        robust.repeatability === null ? '' : ((100 * robust.repeatability) / precision.mean).toFixed(1),
      ),
    },
    { head: 's_L', unit: '%', align: 'point', cells: share(({ precision }) => precision.betweenLaboratories) },
    { head: 's_R', unit: '%', align: 'point', cells: share(({ precision }) => precision.reproducibility) },
    { head: 'r', unit: '%', align: 'point', cells: share(({ precision }) => precision.repeatabilityLimit) },
    { head: 'R', unit: '%', align: 'point', cells: share(({ precision }) => precision.reproducibilityLimit) },
  ])
  const legend =
    's_r between results of one laboratory, s_L between laboratories beyond it, s_R of both together; two results of one laboratory seldom differ by more than r, of two by more than R (2.8 times). Robust stand mean and s_r that far laboratories hardly move (ISO 5725-5).'
  return `${head}\n${out}\n${table}\n\n${wrap(legend, width)}\n\n${flags(round)}`
}

const resultsEach = (replicates: readonly number[]): string => {
  const [least, most] = [Math.min(...replicates), Math.max(...replicates)]
  return least === most ? `${least} results each` : `${least} to ${most} results each`
}

function flags({ laboratories, speeds }: JudgedRound): string {
  const found = laboratories.flatMap((name, lab) => {
    const beyond = (over: (at: RoundSpeed['consistency']['laboratories'][number]) => boolean): readonly number[] =>
      speeds.flatMap(({ slidingSpeed, consistency }) => (over(consistency.laboratories[lab]) ? [slidingSpeed] : []))
    const h = beyond((at) => at.h !== null && at.hCritical !== null && Math.abs(at.h) > at.hCritical)
    const k = beyond((at) => at.k !== null && at.kCritical !== null && at.k > at.kCritical)
    const line = (letter: string, places: readonly number[], what: string): string[] =>
      places.length === 0
        ? []
        : [
            `  ${printable(name)}: ${letter} beyond its critical value at ${speedsInWords(places, speeds.length)} (${what})\n`,
          ]
    return [...line('h', h, 'its level lies off'), ...line('k', k, 'its results scatter more')]
  })
  const tests = speeds.flatMap(({ slidingSpeed, consistency }) =>
    consistency.tests
      .filter(({ verdict }) => verdict !== 'none')
      .map(({ test, verdict, statistic, straggler, outlier, laboratories: which }) => {
        const names = which.map((lab) => printable(laboratories[lab])).join(' and ')
        const limit = verdict === 'outlier' ? outlier : straggler
        return `  ${printQuantity(slidingSpeed, 'velocity', { digits: 3 })}: ${names} is ${verdict === 'outlier' ? 'an outlier (1 %)' : 'a straggler (5 %)'} by ${testWords[test]}, ${statistic.toFixed(3)} against ${limit.toFixed(3)}\n`
      }),
  )
  if (found.length + tests.length === 0) return 'Nobody stands out: h, k, Cochran and Grubbs.\n'
  return `Stands out\n${[...found, ...tests].join('')}Look at these with their people; --without LABORATORY=REASON takes one out.\n`
}

function speedsInWords(places: readonly number[], all: number): string {
  if (places.length === all) return 'all speeds'
  const said = places.map((speed) => printQuantity(speed, 'velocity', { digits: 3 }))
  return said.length === 1 ? said[0] : `${said.slice(0, -1).join(', ')} and ${said[said.length - 1]}`
}
