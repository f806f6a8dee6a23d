import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import type { ReplicatePoint } from '../../../core/decide/index.ts'
import { nearestWord, parseQuantity } from '../../../core/quantity/index.ts'
import { done, failed, type Outcome, type Problem } from '../../../core/terms/index.ts'
import { replicatePoints } from '../../compare/replicateOf.ts'
import { fileProblem } from '../../fileProblem.ts'
import type { ResultDocument } from '../../resultDocument.ts'

/** One curve of one laboratory. */
export interface RoundCurve {
  readonly laboratory: string
  readonly replicate: string
  readonly points: readonly ReplicatePoint[]
}

/** Reads the curves that words stand for: a table of results, or LABORATORY=result.json for one curve each. */
export function roundCurves(words: readonly string[]): Outcome<readonly RoundCurve[]> {
  const curves: RoundCurve[] = []
  const problems: Problem[] = []
  for (const [place, word] of words.entries()) {
    const [, laboratory, file] = /^([^=]+)=(.+)$/.exec(word) ?? [undefined, '', word]
    const text = textOf(file)
    if (!text.ok) problems.push(...text.problems)
    else {
      const read =
        laboratory === ''
          ? tableCurves(text.value, basename(file))
          : resultCurve(text.value, { laboratory, file, place })
      if (read.ok) curves.push(...read.value)
      else problems.push(...read.problems)
    }
  }
  return problems.length > 0 ? failed(...problems) : done(curves)
}

function textOf(file: string): Outcome<string> {
  try {
    return done(readFileSync(file, 'utf8').replace(/^\uFEFF/, ''))
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
}

function resultCurve(
  text: string,
  { laboratory, file, place }: { readonly laboratory: string; readonly file: string; readonly place: number },
): Outcome<readonly RoundCurve[]> {
  try {
    const { points } = JSON.parse(text) as Partial<ResultDocument> // what it lacks is looked at in the next line
    if (Array.isArray(points)) return done([{ laboratory, replicate: `${place + 1}`, points: replicatePoints(points) }])
  } catch {
    // no JSON: told below
  }
  return failed({
    kind: 'resultUnreadable',
    class: 'badInput',
    place: { file },
    what: 'This is no result that "kufe reduce --json" wrote.',
    mend: 'Write one with "kufe reduce RECORD --setup SETUP --json", or name a table without LABORATORY=.',
  })
}

const heads = ['laboratory', 'replicate', 'speed', 'friction'] as const

/** Every line of more than this many cells is another kind of file. */
const longest = 1_000_000

/** A table with a head: laboratory, replicate, speed with its unit in brackets, friction; commas, semicolons or tabs between. */
function tableCurves(text: string, file: string): Outcome<readonly RoundCurve[]> {
  const lines = text.split(/\r?\n/).map((line, i) => ({ line, number: i + 1 }))
  const rows = lines.filter(({ line }) => line.trim() !== '' && !line.trim().startsWith('#'))
  const [head, ...body] = rows
  if (head === undefined || rows.length > longest)
    return failed(noTable(file, 'The table is empty or no table of results.'))
  const between = ['\t', ';', ','].find((mark) => head.line.includes(mark)) ?? ','
  const cells = (line: string): string[] => line.split(between).map((cell) => cell.trim().replace(/^"|"$/g, ''))
  const names = cells(head.line).map((cell) =>
    cell
      .replace(/[([].*$/, '')
      .trim()
      .toLowerCase(),
  )
  const lacking = heads.filter((name) => !names.includes(name))
  if (lacking.length > 0) {
    const nearest = nearestWord(lacking[0], names)
    const hint = nearest === undefined ? '' : ` Did you mean "${nearest}" by "${lacking[0]}"?`
    return failed(noTable(file, `The table has no column ${lacking.join(', ')}.${hint}`))
  }
  const unit = /[([](.*?)[)\]]/.exec(cells(head.line)[names.indexOf('speed')])?.[1] ?? ''
  const curves = new Map<string, { laboratory: string; replicate: string; points: ReplicatePoint[] }>()
  const problems: Problem[] = []
  for (const { line, number } of body) {
    const [laboratory, replicate, speed, friction] = heads.map((name) => cells(line)[names.indexOf(name)] ?? '')
    const at = parseQuantity(`${speed} ${unit}`, 'velocity')
    const value = parseQuantity(friction, 'ratio')
    const bad = !at.ok ? at : !value.ok ? value : !(at.value > 0 && value.value > 0) ? aboveZero : undefined
    if (bad !== undefined || !at.ok || !value.ok) {
      problems.push({ kind: 'cellUnreadable', class: 'badInput', place: { file, line: number }, ...(bad ?? aboveZero) })
      continue
    }
    const key = `${laboratory}\n${replicate}`
    const curve = curves.get(key) ?? { laboratory, replicate, points: [] }
    curve.points.push({ slidingSpeed: at.value, friction: value.value, own: 0, shared: {} })
    curves.set(key, curve)
  }
  return problems.length > 0 ? failed(...problems.slice(0, 20)) : done([...curves.values()])
}

const aboveZero = { what: 'Speed and friction must be above zero.', mend: 'Correct the cell or take the line out.' }

const noTable = (file: string, what: string): Problem => ({
  kind: 'tableUnreadable',
  class: 'badInput',
  place: { file, line: 1 },
  what,
  mend: 'Begin with a line such as "laboratory,replicate,speed (mm/s),friction".',
})
