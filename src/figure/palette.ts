/** Colours of a figure. */
export interface Palette {
  readonly paper: string
  readonly ink: string
  /** Words and lines of second rank; at least 4.5 : 1 against the paper (WCAG 2.2, 1.4.3). */
  readonly quiet: string
  readonly hairline: string
  /** The fitted curve: spruce green. */
  readonly accent: string
  readonly bandOpacity: number
  /** Shade over the speeds that may not be believed. */
  readonly shade: string
  readonly shared: string
  readonly bias: string
  readonly stops: string
  readonly caution: string
  readonly note: string
  /** Letters inside the three signs above. */
  readonly onStops: string
  readonly onCaution: string
  readonly onNote: string
}

export type PaletteName = 'light' | 'dark' | 'print'

/**
 * Colours that mean something (shared part, bias, signs) are those of Okabe & Ito 2008, "Color universal design",
 * chosen to be told apart by colour-blind people. Print carries no meaning by colour: shapes and letters do.
 */
export const palettes: Readonly<Record<PaletteName, Palette>> = {
  light: {
    paper: '#ffffff',
    ink: '#1b2730',
    quiet: '#566670',
    hairline: '#cfd8dc',
    accent: '#1f6b52',
    bandOpacity: 0.18,
    shade: '#8a98a0',
    shared: '#0072b2',
    bias: '#cc79a7',
    stops: '#d55e00',
    caution: '#e69f00',
    note: '#0072b2',
    onStops: '#ffffff',
    onCaution: '#1b2730',
    onNote: '#ffffff',
  },
  dark: {
    paper: '#0f1a2b',
    ink: '#e8edf1',
    quiet: '#a3b3bf',
    hairline: '#2d3c50',
    accent: '#5cc49c',
    bandOpacity: 0.22,
    shade: '#7386a0',
    shared: '#56b4e9',
    bias: '#cc79a7',
    stops: '#d55e00',
    caution: '#e69f00',
    note: '#56b4e9',
    onStops: '#ffffff',
    onCaution: '#0f1a2b',
    onNote: '#0f1a2b',
  },
  print: {
    paper: '#ffffff',
    ink: '#000000',
    quiet: '#404040',
    hairline: '#bdbdbd',
    accent: '#000000',
    bandOpacity: 0.14,
    shade: '#777777',
    shared: '#000000',
    bias: '#8c8c8c',
    stops: '#000000',
    caution: '#d9d9d9',
    note: '#ffffff',
    onStops: '#ffffff',
    onCaution: '#000000',
    onNote: '#000000',
  },
}
