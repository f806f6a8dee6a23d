import { unitsFor } from '../../core/quantity/index.ts'
import { channelNames } from '../../core/terms/index.ts'
import { type Key, type QuantityKey, rangeInWords, type Section } from './keyKinds.ts'
import { setupKeys } from './setupKeys.ts'

type Json = { readonly [key: string]: unknown }

/**
 * The JSON Schema of setup files, from the same table as the reader. Draft-07, which the editors' YAML services
 * complete from. It says what JSON Schema can say; units, ranges and geometry are the reader's.
 */
export function setupJsonSchema(): Json {
  return {
    $schema: 'http://json-schema.org/draft-07/schema#',
    title: 'Setup for Kufe',
    ...keySchema(setupKeys),
  }
}

/** The schema of one key with all below it. */
export function keySchema(key: Key): Json {
  switch (key.is) {
    case 'section':
      return sectionSchema(key)
    case 'variants':
      return {
        description: key.about,
        type: 'object',
        required: [key.on],
        oneOf: Object.values(key.variants).map(sectionSchema),
      }
    case 'columns':
      return {
        description: key.about,
        type: ['object', 'null'],
        additionalProperties: {
          type: 'object',
          minProperties: 1,
          additionalProperties: false,
          properties: {
            channel: { description: 'What the column holds.', enum: [...channelNames, 'none'] },
            unit: {
              description: 'The unit of the column, as people write it.',
              type: 'string',
              examples: ['mN·m', '1/min', '°C'],
            },
          },
        },
      }
    case 'text':
      return { description: key.about, type: ['string', 'number', 'boolean'], examples: [key.example] }
    case 'choice': {
      const standard = key.default === undefined ? {} : { default: key.default }
      const only = key.choices.length === 1 ? { const: key.choices[0] } : { enum: key.choices }
      return { description: key.about, ...only, ...standard }
    }
    case 'quantity':
      return quantitySchema(key)
  }
}

function sectionSchema(section: Section): Json {
  const required = Object.entries(section.keys)
    .filter(([, key]) => key.required === true)
    .map(([name]) => name)
  return {
    description: section.about,
    // A section in which nothing is required may stand empty.
    type: required.length > 0 ? 'object' : ['object', 'null'],
    additionalProperties: false,
    ...(required.length > 0 ? { required } : {}),
    properties: Object.fromEntries(Object.entries(section.keys).map(([name, key]) => [name, keySchema(key)])),
  }
}

function quantitySchema(key: QuantityKey): Json {
  const { dimension, range, about, example } = key
  const words = rangeInWords(key)
  const standard = key.default === undefined ? {} : { default: key.default }
  if (dimension === 'count') {
    return {
      description: `${about} A whole number, ${words}.`,
      type: ['integer', 'string'],
      minimum: range.least,
      maximum: range.most,
      ...standard,
      examples: [Number(example)],
    }
  }
  const units = unitsFor(dimension).map((name) => (name === '1' ? 'none' : name))
  const description = `${about} Units: ${units.join(', ')}; ${words}.`
  if (dimension === 'ratio') return { description, type: ['number', 'string'], ...standard, examples: [example] }
  return { description, type: 'string', pattern: '\\d.*\\D', ...standard, examples: [example] }
}
