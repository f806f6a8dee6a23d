import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { parseQuantity } from '../../core/quantity/index.ts'
import { type GrooveSection, grooveSection } from '../../core/reduce/questions/index.ts'
import { done, failed, type Outcome, type Problem, type WornSpec } from '../../core/terms/index.ts'
import { readProfile } from '../../io/profile/index.ts'
import { readScars, readSections } from '../../io/setup/index.ts'
import { fileProblem } from '../fileProblem.ts'

/** What was typed about wear, as it was typed; it goes before what the setup says. */
export interface TypedWear {
  readonly scars?: readonly string[]
  readonly scarUncertainty?: string
  readonly sections?: readonly string[]
  readonly profiles?: readonly string[]
  /** Two units with a comma between, for profiles that name none. */
  readonly profileUnits?: string
  readonly trackWidth?: string
}

/** The same as numbers, with the grooves that the profiles hold. */
export interface ReadWear {
  readonly worn: WornSpec
  readonly grooves: readonly (GrooveSection & { readonly file: string })[]
}

/** Reads all that was typed and all profiles; all problems at once. */
export async function typedWear(typed: TypedWear): Promise<Outcome<ReadWear>> {
  const problems: Problem[] = []
  const list = <T>(
    read: { items: readonly T[]; faults: readonly { what: string; mend: string }[] },
    option: string,
  ) => {
    problems.push(...read.faults.map((fault) => wrong(option, fault)))
    return read.items
  }
  const length = (text: string | undefined, option: string): number | undefined => {
    if (text === undefined) return undefined
    const read = parseQuantity(text, 'length')
    if (read.ok && read.value > 0) return read.value
    problems.push(wrong(option, read.ok ? { what: `${text} is no length.`, mend: 'Write more than 0 µm.' } : read))
    return undefined
  }
  const scars = typed.scars === undefined ? undefined : list(readScars(typed.scars.join(';')), '--scar')
  const sections = typed.sections === undefined ? [] : list(readSections(typed.sections.join(';')), '--section')
  const scarUncertainty = length(typed.scarUncertainty, '--scar-uncertainty')
  const trackWidth = length(typed.trackWidth, '--track-width')
  const grooves: (GrooveSection & { file: string })[] = []
  for (const file of typed.profiles ?? []) {
    const groove = await grooveOf(file, typed.profileUnits)
    if (groove.ok) grooves.push(groove.value)
    else problems.push(...groove.problems)
  }
  if (problems.length > 0) return failed(...problems)
  const areas = [...sections, ...grooves.map(({ area }) => area)]
  const worn: WornSpec = {
    ...(scars === undefined ? {} : { scars }),
    ...(scarUncertainty === undefined ? {} : { scarUncertainty }),
    ...(areas.length === 0 ? {} : { sections: areas }),
    ...(grooves.length === 0 ? {} : { sectionUncertainty: Math.max(...grooves.map(({ uncertainty }) => uncertainty)) }),
    ...(trackWidth === undefined ? {} : { trackWidth }),
  }
  return done({ worn, grooves })
}

async function grooveOf(file: string, units: string | undefined): Promise<Outcome<GrooveSection & { file: string }>> {
  let text: string
  try {
    text = await readFile(file, 'utf8')
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
  const [x, z] = (units ?? '').split(',')
  const read = readProfile(text, basename(file), units === undefined ? undefined : [x ?? '', z ?? ''])
  if (!read.ok) return read
  return done({ file: basename(file), ...grooveSection(read.value.position, read.value.height) })
}

const wrong = (option: string, { what, mend }: { readonly what: string; readonly mend: string }): Problem => ({
  kind: 'quantityUnreadable',
  class: 'wrongUse',
  place: { name: option },
  what,
  mend,
})
