/** Lower-case hexadecimal SHA-256. */
export type Sha256 = string

/** What a result was made from; the same origin gives the same bytes. */
export interface Origin {
  readonly raw: Sha256
  readonly setup: Sha256
  readonly options: Readonly<Record<string, unknown>>
  readonly program: string
  readonly seed: number
}
