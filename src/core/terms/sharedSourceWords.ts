import type { SharedSource } from './measured.ts'

/** The few words by which people know a shared source of uncertainty. Pictures, tables and pages share them. */
export const sharedSourceWords: Readonly<Record<SharedSource, string>> = {
  torqueScale: 'scale of the torque',
  forceScale: 'scale of the axial force',
  forceZero: 'zero of the axial force',
  torqueBlank: 'torque blank',
  lever: 'lever arm',
  loadFactor: 'load factor',
  tilt: 'tilt',
}
