import { existsSync } from 'node:fs'
import { done, failed, type Outcome } from '../../core/terms/index.ts'

/** Folder that is taken where nobody named a lab. */
const usualPlace = './kufe-lab'

/** The lab's place: what this call names, else what the environment names, else the usual folder where there is one. */
export function findLab(named: string | undefined, remembered: string | undefined): Outcome<string> {
  if (named !== undefined) return done(named)
  if (remembered !== undefined && remembered !== '') return done(remembered)
  if (existsSync(usualPlace)) return done(usualPlace)
  return failed({
    kind: 'labNotNamed',
    class: 'wrongUse',
    place: {},
    what: 'No lab is named, and there is no folder kufe-lab here.',
    mend: 'Name it with --lab or KUFE_LAB; "kufe lab new kufe-lab" makes one.',
  })
}
