import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { expect, test } from 'vitest'
import { pages } from './pages.ts'

/** Headings of a page as the anchors that links use. */
const anchorsOf = (text: string): string[] =>
  [...text.matchAll(/^#+ (.+)$/gm)].map(([, heading]) =>
    heading
      .toLowerCase()
      .replace(/[^\p{L}\p{N} _-]/gu, '')
      .replaceAll(' ', '-'),
  )

test.for(pages)('%s links to what is there', (page) => {
  const text = readFileSync(page, 'utf8')
  const targets = [...text.matchAll(/\]\(([^)\s]+)\)/g)].map(([, target]) => target)
  const inside = targets.filter((target) => !/^[a-z]+:/.test(target))
  const lost = inside.filter((target) => {
    const [path, anchor] = target.split('#')
    const file = path === '' ? page : join(dirname(page), path)
    return !existsSync(file) || (anchor !== undefined && !anchorsOf(readFileSync(file, 'utf8')).includes(anchor))
  })
  expect(lost).toEqual([])
})

test('docs/README.md leads to every page, the verbs by way of the README', () => {
  const index = readFileSync('docs/README.md', 'utf8')
  const others = pages
    .filter((page) => /^docs\/(?!verbs\/|README\.md)/.test(page))
    .map((page) => page.slice('docs/'.length))
  expect(others.filter((page) => !index.includes(`(${page})`))).toEqual([])
})
