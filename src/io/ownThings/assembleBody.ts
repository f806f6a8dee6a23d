import {
  type Hardness,
  type HardnessScale,
  hardnessScales,
  type KnownValue,
  type MaterialFamily,
  materialFamilies,
  type OwnMaterial,
  ownValue,
  type Strength,
} from '../../core/material/index.ts'
import type { RunValues } from '../virtualRun/runValues.ts'

/** The body from values that have passed their ranges. */
export function assembleBody(values: RunValues): OwnMaterial {
  const known = (key: string): { readonly [name: string]: KnownValue } => {
    const value = knownValue(values, key)
    return value === undefined ? {} : { [key]: value }
  }
  const [strength, hardness, roughness] = ['strength', 'hardness', 'roughness'].map((key) => knownValue(values, key))
  return {
    name: values.text('body.name'),
    synonyms: namesIn(values, 'body.synonyms'),
    ...(values.has('body.family') ? { family: chosen<MaterialFamily>(values, 'body.family', materialFamilies) } : {}),
    ...known('elasticModulus'),
    ...known('poissonRatio'),
    ...known('density'),
    ...known('conductivity'),
    ...known('heatCapacity'),
    ...(strength === undefined ? {} : { strength: { ...strength, kind: strengthKind(values) } }),
    ...(hardness === undefined ? {} : { hardness: [hardnessOf(values, hardness)] }),
    ...(roughness === undefined ? {} : { finishes: [{ ...roughness, finish: values.text('body.roughness.finish') }] }),
    ...(values.has('body.note') ? { note: values.text('body.note') } : {}),
  }
}

/** Names between commas. */
export const namesIn = (values: RunValues, path: string): readonly string[] =>
  values.has(path)
    ? values
        .text(path)
        .split(',')
        .map((name) => name.trim())
        .filter((name) => name !== '')
    : []

function knownValue(values: RunValues, key: string): KnownValue | undefined {
  const value = values.maybe(`body.${key}.value`)
  if (value === undefined) return undefined
  const source = values.text(`body.${key}.source`, values.text('body.source'))
  const low = values.number(`body.${key}.low`, value)
  const high = values.number(`body.${key}.high`, value)
  return ownValue(value, source, { low, high })
}

const strengthKind = (values: RunValues): Strength['kind'] =>
  chosen<Strength['kind']>(values, 'body.strength.kind', ['yield', 'flexural', 'tensile', 'compressive'])

const hardnessOf = (values: RunValues, value: KnownValue): Hardness => ({
  ...value,
  scale: chosen<HardnessScale>(values, 'body.hardness.scale', hardnessScales),
})

/** A word that the reader has held against the same list. */
function chosen<T extends string>(values: RunValues, path: string, words: readonly T[]): T {
  const word = words.find((one) => one === values.text(path))
  if (word === undefined) throw new RangeError(`${path} must have been read as one of ${words.join(', ')}`)
  return word
}
