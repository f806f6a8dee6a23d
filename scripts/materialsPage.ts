import { readFileSync, writeFileSync } from 'node:fs'
import { materialsTables } from './materialsTable.ts'

// Puts the built-in bodies into docs/materials.md. Run it after a change of the tables; a test compares the two.

/** What stands between two marks of the page. */
function between(name: string): RegExp {
  return new RegExp(`(<!-- ${name}: begin -->\\n)[\\s\\S]*?(<!-- ${name}: end -->)`)
}

const page = new URL('../docs/materials.md', import.meta.url)
const { bodies, coefficients } = materialsTables()
const text = readFileSync(page, 'utf8')
  .replace(
    between('bodies'),
    `$1
${bodies}

$2`,
  )
  .replace(
    between('coefficients'),
    `$1
${coefficients}

$2`,
  )
writeFileSync(page, text)
