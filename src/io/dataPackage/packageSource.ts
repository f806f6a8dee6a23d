/** Where a package is read from. Paths are relative with forward slashes, and were looked at with `isSafePath` before. */
export interface PackageSource {
  /** How problems call it. */
  readonly name: string
  /** Undefined where there is no such file, or where it is a link out of the package. */
  read(path: string): Promise<Uint8Array | undefined>
}
