import type { Outside } from '../../core/terms/index.ts'
import type { Change } from '../../store/index.ts'

/** Which lab, who works on it and why. A face knows all three; no use case asks the machine. */
export interface LabCall {
  /** A folder, or an address `postgres://…`. */
  readonly place: string
  readonly who: string
  /** May be empty where something is new. */
  readonly why: string
}

/** The change that is being made now. */
export const changeNow = ({ who, why }: LabCall, outside: Outside): Change => ({
  at: outside.now().toISOString(),
  who,
  why,
})
