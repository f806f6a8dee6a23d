/** One room of the house: a folder under src, whom it may import, and what it may take from outside the house. */
export interface Floor {
  readonly room: string
  readonly may: readonly string[]
  /** Pure rooms see no Node built-in; core sees no package either. */
  readonly packages: boolean
  readonly builtins: boolean
  /** A room without code yet. The check fails once it has some, so that nobody forgets to open it. */
  readonly planned?: true
}

const core = (room: string, may: string, planned?: true): Floor => ({
  room: `core/${room}`,
  may: rooms(may),
  packages: false,
  builtins: false,
  planned,
})

const rooms = (names: string): string[] =>
  names
    .split(' ')
    .filter((name) => name !== '')
    .map((name) => `core/${name}`)

const coreRooms = [
  core('terms', ''),
  core('numeric', 'terms'),
  core('quantity', 'terms numeric'),
  core('stats', 'terms numeric'),
  core('material', 'terms numeric'),
  core('contact', 'terms numeric material'),
  core('film', 'terms numeric material contact'),
  core('fixture', 'terms numeric material contact'),
  core('rig', 'terms numeric stats material contact film fixture'),
  core('reduce', 'terms numeric quantity stats contact film fixture rig'),
  core('curve', 'terms numeric stats film'),
  core('plan', 'terms numeric quantity stats material contact film fixture rig curve'),
  core('decide', 'terms numeric quantity stats plan'),
]

/** `core` by itself means the files right in src/core: the library's entry. */
const wholeCore = ['core', ...coreRooms.map(({ room }) => room)]

/** Who may import whom, from the ground up. The reasons stand in CONTRIBUTING.md. */
export const floors: readonly Floor[] = [
  ...coreRooms,
  { room: 'core', may: wholeCore, packages: false, builtins: false },
  { room: 'figure', may: rooms('terms quantity'), packages: true, builtins: false },
  { room: 'io', may: wholeCore, packages: true, builtins: true },
  { room: 'store', may: rooms('terms'), packages: true, builtins: true },
  { room: 'report', may: [...rooms('terms quantity'), 'figure'], packages: true, builtins: true },
  { room: 'bench', may: [...wholeCore, 'io', 'store', 'figure', 'report'], packages: true, builtins: true },
  { room: 'server', may: [...wholeCore, 'bench'], packages: true, builtins: true },
  { room: 'cli', may: [...wholeCore, 'bench', 'server'], packages: true, builtins: true },
  { room: 'web', may: [...wholeCore, 'figure', 'server'], packages: true, builtins: false },
]

/** Pattern of the paths that lie in a room. */
export const inside = (room: string): string => (room === 'core' ? '^src/core/[^/]+$' : `^src/${room}/`)
