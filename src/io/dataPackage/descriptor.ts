import { plainName } from './fileNames.ts'
import type { PackageContent } from './packageContent.ts'
import type { DescribedFile } from './packageFile.ts'
import { tableDialect } from './tableSchema.ts'

/**
 * `datapackage.json`: Data Package Standard 2.0, in words that version 1 reads as well (`profile` beside `$schema`, one path a
 * resource). Every file is a resource with its size and SHA-256.
 */
export function descriptor(content: PackageContent, files: readonly DescribedFile[]): string {
  const { title, description, created, creators, licence } = content
  const document = {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    profile: 'data-package',
    name: plainName(title),
    title,
    ...(description === '' ? {} : { description }),
    created,
    ...(creators.length === 0
      ? {}
      : { contributors: creators.map((creator) => ({ title: creator, role: 'author', roles: ['creator'] })) }),
    ...(licence === null ? {} : { licenses: [licence] }),
    resources: files.map(resource),
  }
  return `${JSON.stringify(document, null, 2)}\n`
}

/** The name of a resource is its path with hyphens: unique, since paths are. */
function resource({ path, size, sha256, title, mediaType, schema }: DescribedFile): object {
  return {
    name: path.toLowerCase().replace(/[^a-z0-9._-]/g, '-'),
    path,
    title,
    ...(schema === undefined ? {} : { type: 'table' }),
    format: path.slice(path.lastIndexOf('.') + 1),
    mediatype: mediaType,
    ...(/^text\/|json$|yaml$/.test(mediaType) ? { encoding: 'utf-8' } : {}),
    bytes: size,
    hash: `sha256:${sha256}`,
    ...(schema === undefined ? {} : { dialect: tableDialect, schema }),
  }
}
