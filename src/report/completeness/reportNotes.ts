/**
 * What no setup holds and people have to say, by the item of a complete report that it answers. Plain sentences.
 */
export const noteKeys = [
  'method',
  'materials',
  'specimens',
  'surfaces',
  'cleaning',
  'lubricant',
  'contact',
  'load',
  'motion',
  'environment',
  'runIn',
  'calibration',
  'evaluation',
  'repeats',
  'trace',
  'unusual',
  'damage',
  'zeroes',
  'blank',
  'alignment',
  'turns',
  'exclusions',
  'checkStandard',
] as const

/** Key of one note. */
export type NoteKey = (typeof noteKeys)[number]

export type ReportNotes = Readonly<Partial<Record<NoteKey, string>>>
