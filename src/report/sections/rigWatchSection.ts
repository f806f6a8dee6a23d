import type { SectionOf } from './sectionOf.ts'

/** What the check standards say of the rig, every open alarm among it; left out where the lab watches none. */
export const rigWatchSection: SectionOf = ({ texts: { rigWatch } }) => {
  if (rigWatch === undefined) return { heading: 'Watch over the rig', blocks: [] }
  const { watched, open } = rigWatch
  const lead = { kind: 'list', items: watched } as const
  if (open.length === 0) return { heading: 'Watch over the rig', blocks: [lead] }
  return {
    heading: 'Watch over the rig',
    blocks: [
      lead,
      {
        kind: 'paragraph',
        text: 'Open alarms. They block nothing, and stand on every report of this lab until somebody says what they were.',
      },
      { kind: 'list', items: open.map(({ sentence, id }) => `${sentence} (${id})`) },
    ],
  }
}
