import { schemaVersion } from '../../core/terms/index.ts'

/** A starter file itself, or where it was written and what to do with it next. */
export function starterWritten(
  starter: string,
  { out, json }: { readonly out?: string; readonly json?: true },
  next: (file: string) => string,
): string {
  if (json === true) return `${JSON.stringify({ schemaVersion, file: out ?? null, starter }, null, 2)}\n`
  return out === undefined ? starter : `Wrote ${out}. Put in your own values, then: ${next(out)}\n`
}
