import { setTimeout } from 'node:timers/promises'
import type { StopSignal } from '../core/terms/index.ts'

/** Waits for Ctrl+C or another wish to end. */
export async function untilStopped(stop: StopSignal): Promise<void> {
  while (!stop.aborted) await setTimeout(50)
}
