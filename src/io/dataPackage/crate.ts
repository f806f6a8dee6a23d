import type { PackageContent } from './packageContent.ts'
import type { DescribedFile } from './packageFile.ts'

/**
 * `ro-crate-metadata.json`: the same files as an RO-Crate 1.1 (flattened JSON-LD). Every file is a data entity with size and
 * checksum; what was made from what is a CreateAction with the program as its instrument.
 */
export function crate(content: PackageContent, files: readonly DescribedFile[]): string {
  const { title, description, created, creators, licence, program } = content
  const people = creators.map((name, i) => ({ '@id': `#creator-${i + 1}`, '@type': 'Person', name }))
  const made = files.flatMap(({ path, from }, i) => (from === undefined ? [] : [action(path, from, i + 1)]))
  const graph = [
    {
      '@id': 'ro-crate-metadata.json',
      '@type': 'CreativeWork',
      conformsTo: { '@id': 'https://w3id.org/ro/crate/1.1' },
      about: { '@id': './' },
    },
    {
      '@id': './',
      '@type': 'Dataset',
      name: title,
      description: description === '' ? title : description,
      datePublished: created,
      license:
        licence === null ? 'No licence is stated: ask whoever answers for the data.' : { '@id': licenceId(licence) },
      ...(people.length === 0 ? {} : { author: people.map(reference) }),
      hasPart: files.map(({ path }) => ({ '@id': path })),
      ...(made.length === 0 ? {} : { mentions: made.map(reference) }),
    },
    ...(licence === null
      ? []
      : [
          {
            '@id': licenceId(licence),
            '@type': 'CreativeWork',
            name: licence.title ?? licence.name,
            identifier: licence.name,
          },
        ]),
    ...people,
    { '@id': '#program', '@type': 'SoftwareApplication', name: 'Kufe', softwareVersion: program },
    ...files.map(({ path, title: name, mediaType, size, sha256 }) => ({
      '@id': path,
      '@type': 'File',
      name,
      encodingFormat: mediaType,
      contentSize: String(size),
      sha256,
    })),
    ...made,
  ]
  return `${JSON.stringify({ '@context': context, '@graph': graph }, null, 2)}\n`
}

/** The crate's own context, and the one word that it lacks: the checksum, as schema.org has it since. */
const context = ['https://w3id.org/ro/crate/1.1/context', { sha256: 'https://schema.org/sha256' }]

const licenceId = ({ path, name }: { readonly path?: string; readonly name: string }): string =>
  path ?? `https://spdx.org/licenses/${encodeURIComponent(name)}`

const reference = (entity: { readonly '@id': string }): object => ({ '@id': entity['@id'] })

const action = (path: string, from: readonly string[], number: number) => ({
  '@id': `#made-${number}`,
  '@type': 'CreateAction',
  name: `How ${path} was made`,
  instrument: { '@id': '#program' },
  object: from.map((source) => ({ '@id': source })),
  result: { '@id': path },
})
