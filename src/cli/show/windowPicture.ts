import { hardestLimit, type PlanLimit, type PlanWindow, planLimitWords } from '../../core/plan/index.ts'
import { fromSi, readableUnit } from '../../core/quantity/index.ts'
import { plotScale } from './plotScale.ts'

const labelWidth = 9

/**
 * The window in characters: load up, speed to the right, both on logarithms. `·` can be measured, `o` is the planned load and its
 * speeds, a letter is the limit that forbids the cell; the letters are explained below.
 */
export function windowPicture(
  window: PlanWindow,
  planned: { readonly force: number; readonly slowest: number; readonly fastest: number },
  { unicode }: { readonly unicode: boolean },
): string {
  const { speeds, forces, broken } = window
  const forceUnit = readableUnit(planned.force, 'force')
  const loads = plotScale([...forces].map((force) => fromSi(force, forceUnit)))
  const rowOfPlan = nearest(forces, planned.force)
  const letters = new Set<PlanLimit>()
  const lines = Array.from(forces, (_, j) => {
    const cells = Array.from(speeds, (speed, i) => {
      const limit = hardestLimit(broken[j * speeds.length + i])
      if (j === rowOfPlan && limit === undefined && speed >= planned.slowest / 1.02 && speed <= planned.fastest * 1.02)
        return 'o'
      if (limit === undefined) return unicode ? '·' : '.'
      letters.add(limit)
      return planLimitWords[limit].sign
    })
    return cells.join('')
  }).reverse()
  const wall = unicode ? '│' : '|'
  const labels = labelsOf(loads, lines.length)
  const body = lines.map((line, row) => `${(labels.get(row) ?? '').padStart(labelWidth - 1)} ${wall}${line}`)
  const rule = `${' '.repeat(labelWidth)}${unicode ? '└' : '+'}${(unicode ? '─' : '-').repeat(speeds.length)}`
  const key = [...letters].map((limit) => `  ${planLimitWords[limit].sign}  ${planLimitWords[limit].words}`)
  return [
    `${'load'.padStart(labelWidth - 1)} (${forceUnit.text})`,
    ...body,
    rule,
    ...speedLine(speeds),
    `  ${unicode ? '·' : '.'}  can be measured   o  planned`,
    ...key,
  ].join('\n')
}

function nearest(values: Float64Array, wanted: number): number {
  let best = 0
  for (let i = 0; i < values.length; i++) {
    if (Math.abs(Math.log(values[i] / wanted)) < Math.abs(Math.log(values[best] / wanted))) best = i
  }
  return best
}

function labelsOf(scale: ReturnType<typeof plotScale>, rows: number): ReadonlyMap<number, string> {
  const labels = new Map<number, string>()
  for (const tick of scale?.ticks ?? []) {
    const row = Math.round((1 - (scale?.share(tick) ?? 0)) * (rows - 1))
    if (!labels.has(row) && !labels.has(row - 1) && !labels.has(row + 1)) labels.set(row, String(tick))
  }
  return labels
}

/** Ticks below the axis, and the unit. */
function speedLine(speeds: Float64Array): readonly string[] {
  const unit = readableUnit(Math.sqrt(speeds[0] * speeds[speeds.length - 1]), 'velocity')
  const scale = plotScale([...speeds].map((speed) => fromSi(speed, unit)))
  let line = ''
  for (const tick of scale?.ticks ?? []) {
    const label = String(tick)
    const start = labelWidth + 1 + Math.round((scale?.share(tick) ?? 0) * (speeds.length - 1)) - (label.length >> 1)
    if (start < line.length + 2 && line !== '') continue
    line = line.padEnd(start) + label
  }
  const title = `sliding speed (${unit.text})`
  return [line, ' '.repeat(labelWidth + 1 + Math.max(0, (speeds.length - title.length) >> 1)) + title]
}
