import { isMap, isScalar, isSeq, type Node, type YAMLMap } from 'yaml'
import { nearestWord } from '../../core/quantity/index.ts'
import type { Place, Problem } from '../../core/terms/index.ts'
import type { YamlSource } from '../setup/yamlSource.ts'

/** All that can be wrong with a model, beside what YAML itself complains of. */
export type ModelProblemKind =
  | 'modelKeyUnknown'
  | 'modelKeyTwice'
  | 'modelKeyMissing'
  | 'modelValueUnreadable'
  | 'modelFormula'
  | 'modelUnits'
  | 'modelCorrelation'

/** Walks a YAML text and gathers every problem on the way. */
export class ModelReader {
  readonly problems: Problem[] = []
  private readonly source: YamlSource

  constructor(source: YamlSource) {
    this.source = source
  }

  complain(at: Node | Place, { kind, what, mend }: { kind: ModelProblemKind; what: string; mend: string }): void {
    const place = isMap(at) || isScalar(at) || isSeq(at) ? this.place(at) : (at as Place) // a node or a place, nothing else
    this.problems.push({ kind, class: 'badInput', place, what, mend })
  }

  place(node: Node, name?: string): Place {
    return this.source.place(node, name)
  }

  /** Entries of a map under the names that it may have; others are complained of. */
  entries(node: unknown, known: readonly string[] | undefined): ReadonlyMap<string, { key: Node; value: Node | null }> {
    const found = new Map<string, { key: Node; value: Node | null }>()
    const map: YAMLMap | undefined = isMap(node) ? node : undefined
    for (const { key, value } of map?.items ?? []) {
      const keyNode = key as Node // yaml gives keys as nodes
      const name = isScalar(key) ? String(key.value).trim() : ''
      if (found.has(name)) {
        this.complain(keyNode, { kind: 'modelKeyTwice', what: `${name} stands twice.`, mend: 'Keep one of the two.' })
      } else if (known !== undefined && !known.includes(name)) {
        const nearest = nearestWord(name, known)
        const mend = nearest === undefined ? `Known are ${known.join(', ')}.` : `Did you mean ${nearest}?`
        this.complain(keyNode, { kind: 'modelKeyUnknown', what: `"${name}" means nothing here.`, mend })
      } else found.set(name, { key: keyNode, value: this.source.behind(value) })
    }
    return found
  }

  /** The plain text of a node; complains where there is none. */
  text(node: Node | null, key: Node, example: string): string | undefined {
    if (isScalar(node) && String(node.value ?? '').trim() !== '') return String(node.value).trim()
    this.complain(key, {
      kind: 'modelValueUnreadable',
      what: 'There is no plain value.',
      mend: `Write one, such as ${example}.`,
    })
    return undefined
  }
}
