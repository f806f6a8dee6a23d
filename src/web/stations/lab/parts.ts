/** Parts of the drawer, as they stand in the address (`?lab=rigs`). */
export const drawerParts = [
  'rigs',
  'fixtures',
  'bodies',
  'liquids',
  'materials',
  'standards',
  'people',
  'history',
] as const

export type DrawerPart = (typeof drawerParts)[number]

export const partWords: Readonly<Record<DrawerPart, string>> = {
  rigs: 'Rigs',
  fixtures: 'Fixtures',
  bodies: 'Balls and plates',
  liquids: 'Liquids',
  materials: 'Materials',
  standards: 'Check standards',
  people: 'People',
  history: 'History',
}

export const isPart = (text: string): text is DrawerPart => (drawerParts as readonly string[]).includes(text)
