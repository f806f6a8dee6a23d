import { readFileSync, writeFileSync } from 'node:fs'
import { verbs } from '../src/cli/verbs.ts'

// Puts the help of every verb into its page, below the heading "Help". Run it after a change of an option; a test compares the two.

for (const { name, help } of verbs) {
  const page = new URL(`../docs/verbs/${name}.md`, import.meta.url)
  const text = readFileSync(page, 'utf8')
  const at = text.indexOf('\n## Help\n')
  if (at < 0) throw new Error(`docs/verbs/${name}.md has no heading "## Help"`)
  const next = text.indexOf('\n## ', at + 1)
  const rest = next < 0 ? '' : text.slice(next)
  writeFileSync(page, `${text.slice(0, at)}\n## Help\n\n\`\`\`text\n${help.trimEnd()}\n\`\`\`\n${rest}`)
}
