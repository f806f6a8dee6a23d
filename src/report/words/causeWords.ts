import type { SharedSource } from '../../core/terms/index.ts'

/** Causes of shared error as people call them. */
export const causeWords: Readonly<Record<SharedSource, string>> = {
  torqueScale: 'scale of the torque',
  forceScale: 'scale of the axial force',
  forceZero: 'zero of the axial force',
  torqueBlank: 'torque blank',
  lever: 'lever arm and load factor',
  loadFactor: 'load factor',
  tilt: 'tilt (force and friction that swing together)',
}
