import { spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { completionScript } from '../../src/cli/completionScript.ts'
import { programOf } from '../../src/cli/program.ts'
import { allVerbs, verbs } from '../../src/cli/verbs.ts'

const { commands } = programOf(allVerbs, { version: '', run: () => {} })

test.for(['bash', 'zsh', 'fish'] as const)('%s knows every verb and the options of reduce', (shell) => {
  const script = completionScript(shell, commands)
  for (const { name } of verbs) expect(script).toContain(name)
  for (const option of ['save-mapping', 'segmentation', 'strict']) expect(script).toContain(option)
})

/** What bash offers for a line that ends in the word to be completed. */
function offered(...words: string[]): string[] {
  const line = words.map((word) => `'${word}'`).join(' ')
  const script = `${completionScript('bash', commands)}\nCOMP_WORDS=(${line}); COMP_CWORD=${words.length - 1}; _kufe; printf '%s\\n' "\${COMPREPLY[@]}"`
  return spawnSync('bash', ['-c', script], { encoding: 'utf8', cwd: '/' })
    .stdout.split('\n')
    .filter((word) => word !== '')
}

test('bash completes verbs, options and their choices', () => {
  expect(offered('kufe', 're')).toEqual(['reduce', 'report', 'restore'])
  expect(offered('kufe', 'reduce', '--seg')).toEqual(['--segmentation'])
  expect(offered('kufe', 'reduce', '--palette', 'd')).toEqual(['dark'])
  expect(offered('kufe', 'completion', 'f')).toContain('fish')
})
