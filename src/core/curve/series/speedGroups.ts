import type { SeriesMember, SeriesPoint } from '../../terms/index.ts'

/** Speeds closer than this share are one. */
const sameSpeed = 0.04

/** One speed and what each member measured there; a member without it is left out. */
export interface SpeedGroup {
  readonly slidingSpeed: number
  readonly found: readonly { readonly member: SeriesMember; readonly point: SeriesPoint }[]
}

/** Speeds that two members or more have in common, slowest first. */
export function speedGroups(members: readonly SeriesMember[]): SpeedGroup[] {
  const speeds = members.flatMap(({ points }) => points.map(({ slidingSpeed }) => slidingSpeed)).sort((a, b) => a - b)
  const groups: SpeedGroup[] = []
  let last = 0
  for (const speed of speeds) {
    if (speed <= last * (1 + sameSpeed)) continue
    last = speed
    const found = members.flatMap((member) => {
      const point = member.points.find(
        ({ slidingSpeed }) => slidingSpeed >= speed && slidingSpeed <= speed * (1 + sameSpeed),
      )
      return point === undefined ? [] : [{ member, point }]
    })
    if (found.length >= 2) groups.push({ slidingSpeed: speed, found })
  }
  return groups
}
