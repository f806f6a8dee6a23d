import { type ReducedRecord, type Sign, signsOf } from '../../bench/index.ts'
import { printSteps } from '../../core/quantity/index.ts'
import { type Remark, type RemarkKind, type RemarkWeight, remarkKinds, remarkWords } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { weightSigns } from './weightSigns.ts'
import { wrap } from './wrap.ts'

/** Every kind of remark once, heaviest first: its letter in the table of points, where it stands, the sentence with its number, and what to do next. */
export function remarksInWords({ reduction, remarks }: ReducedRecord, screen: Screen, width: number): string {
  const all = [...reduction.points.flatMap((point) => point.remarks), ...remarks]
  if (all.length === 0) return '  No remarks.'
  const signs = signsOf(reduction.points)
  const onPoints = signs.map(({ kind }) => kind)
  const others = remarkKinds.filter((kind) => !onPoints.includes(kind) && all.some((remark) => remark.kind === kind))
  return [...onPoints, ...others]
    .sort((a, b) => weightOf(a) - weightOf(b))
    .map((kind) => {
      const sign = signs.find((one) => one.kind === kind)
      const found = all.filter((remark) => remark.kind === kind)
      return paragraph({ kind, sign, found }, screen, width)
    })
    .join('\n')
}

const weights: readonly RemarkWeight[] = ['stops', 'caution', 'note']
const weightOf = (kind: RemarkKind): number => weights.indexOf(remarkWords[kind].weight)

interface Told {
  readonly kind: RemarkKind
  readonly sign: Sign | undefined
  readonly found: readonly Remark[]
}

function paragraph({ kind, sign, found }: Told, screen: Screen, width: number): string {
  const { words, weight } = remarkWords[kind]
  const where = sign === undefined ? '' : `, ${printSteps(sign.steps)}`
  const head = `  ${weightSigns[weight]}${sign?.letter ?? ' '} ${words}${where}`
  const worst = farthest(found)
  const sentences = wrap(`${worst.sentence} ${worst.next}`, width, { indent: '     ' })
  return `${painted(screen, head, weight === 'stops' ? 'warn' : 'strong')}\n${sentences}`
}

/** The finding that lies farthest beyond its limit, whichever side the limit is on; the first of equals. */
function farthest(found: readonly Remark[]): Remark {
  const distance = ({ seen, limit }: Remark): number => {
    const ratio = Math.abs(seen / limit)
    return Number.isFinite(ratio) && ratio > 0 ? Math.abs(Math.log(ratio)) : 0
  }
  return found.reduce((worst, one) => (distance(one) > distance(worst) ? one : worst))
}
