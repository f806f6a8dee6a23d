import { refuse } from './storeProblem.ts'

const pattern = /^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$/

/**
 * A name by which people and links know a lab, a study or a sample; it never changes.
 * Small letters, digits and hyphens sort alike in every database and stand in a file name, an address and a sheet.
 */
export function checkedIdentifier(id: string, what: string): string {
  if (pattern.test(id)) return id
  return refuse('notUsable', {
    place: { name: `${what} id`, cell: id },
    what: `"${id}" cannot be the id of a ${what}.`,
    mend: 'Use 1 to 64 small letters, digits and hyphens, such as drawer-runners.',
  })
}

const dayPattern = /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/

/** A calendar day as the lab's wall shows it: 2026-11-25. */
export function checkedDay(day: string | null | undefined): string | null {
  if (day === null || day === undefined || dayPattern.test(day)) return day ?? null
  return refuse('notUsable', {
    place: { name: 'day', cell: day },
    what: `"${day}" is not a day.`,
    mend: 'Write it as year-month-day, such as 2026-11-25.',
  })
}
