/** The six stations of a study, in the order of the job. Keys 1 to 6 go to them. */
export const stationNames = ['ask', 'plan', 'rig-up', 'read', 'decide', 'report'] as const

export type StationName = (typeof stationNames)[number]

/** How a station is called, and what it is for in a few words. */
export const stationWords: Readonly<Record<StationName, { readonly name: string; readonly about: string }>> = {
  ask: { name: 'Ask', about: 'what is to be known, and what the answer costs' },
  plan: { name: 'Plan', about: 'what is mounted, pressed and slid, and what it will show' },
  'rig-up': { name: 'Rig up', about: 'the run sheet, step by step at the rig' },
  read: { name: 'Read', about: 'records in, curves out, remarks answered' },
  decide: { name: 'Decide', about: 'the verdict with its band and its margin' },
  report: { name: 'Report', about: 'the paper as it will print, and what it lacks' },
}

export const isStation = (text: string): text is StationName => (stationNames as readonly string[]).includes(text)
