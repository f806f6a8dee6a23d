/** How one field of a result changed, over all its places: a field of a list is one field. */
export interface Difference {
  /** Path with `[]` for the places of a list: `points[].friction`. */
  readonly field: string
  readonly changed: number
  /** Places that the field has in either result. */
  readonly of: number
  /** Largest change of a number relative to the value before; null where words changed, or something came or went. */
  readonly largest: number | null
  /** Where the largest change is, with both values; undefined where there is none. */
  readonly at: string
  readonly before: Plain | undefined
  readonly after: Plain | undefined
}

type Plain = string | number | boolean | null

interface Leaf {
  readonly field: string
  readonly value: Plain
}

/** Fields in which two results differ, in the order of the documents. `except` names fields that do not count. */
export function resultDifferences(before: string, after: string, except: readonly string[] = []): Difference[] {
  const [old, fresh] = [leavesOf(before), leavesOf(after)]
  const paths = new Map([...old, ...fresh].map(([path, { field }]) => [path, field]))
  const fields = new Map<string, Difference>()
  for (const [path, field] of paths) {
    if (except.includes(field)) continue
    const one = oneDifference(path, old.get(path), fresh.get(path))
    const known = fields.get(field) ?? { ...one, field, changed: 0, of: 0 }
    const worse = one.changed > 0 && (known.changed === 0 || weight(one) > weight(known))
    fields.set(field, {
      ...(worse ? { ...one, field } : known),
      changed: known.changed + one.changed,
      of: known.of + 1,
    })
  }
  return [...fields.values()].filter(({ changed }) => changed > 0)
}

function oneDifference(at: string, old: Leaf | undefined, fresh: Leaf | undefined): Omit<Difference, 'field' | 'of'> {
  const [before, after] = [old?.value, fresh?.value]
  const numbers = typeof before === 'number' && typeof after === 'number'
  const largest = numbers ? (before === after ? 0 : Math.abs((after - before) / before)) : null
  return { changed: before === after ? 0 : 1, largest, at, before, after }
}

/** What is not a change of a number weighs most. */
const weight = ({ largest }: Pick<Difference, 'largest'>): number => largest ?? Number.POSITIVE_INFINITY

/** All plain values of a document by their paths; an empty list or object is one place without a value. */
function leavesOf(text: string): Map<string, Leaf> {
  const leaves = new Map<string, Leaf>()
  const walk = (value: unknown, path: string, field: string): void => {
    if (Array.isArray(value)) {
      for (const [i, item] of value.entries()) walk(item, `${path}[${i}]`, `${field}[]`)
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, held] of Object.entries(value)) {
        const dot = path === '' ? '' : '.'
        walk(held, `${path}${dot}${key}`, `${field}${dot}${key}`)
      }
    } else leaves.set(path, { field, value: value as Plain }) // JSON holds nothing else
  }
  walk(JSON.parse(text), '', '')
  return leaves
}
