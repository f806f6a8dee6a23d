import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { expect, test } from 'vitest'
import { filesUnder } from '../../scripts/filesUnder.ts'
import { verbs } from '../../src/cli/verbs.ts'

test.for(verbs.map(({ name, help }) => ({ name, help })))(
  'the page of $name shows its help as it is',
  ({ name, help }) => {
    const page = readFileSync(`docs/verbs/${name}.md`, 'utf8')
    expect(page).toContain(`\`\`\`text\n${help.trimEnd()}\n\`\`\`\n`)
  },
)

test('every verb has a page, every page a verb, and the README leads to each', () => {
  const names = verbs.map(({ name }) => name).sort()
  expect(filesUnder('.', 'docs/verbs').map((path) => basename(path, '.md'))).toEqual(names)
  const readme = readFileSync('README.md', 'utf8')
  expect(names.filter((name) => !readme.includes(`(docs/verbs/${name}.md)`))).toEqual([])
})
