import type { NoteKey } from './reportNotes.ts'

/**
 * What a friction report holds that somebody else can use. The first seventeen are the items of ASTM G115 (guide for measuring and
 * reporting friction coefficients) in our own words, from memory; from `zeroes` on they are what a rotational rheometer
 * adds to them (common practice, no source).
 */
export const itemWords: Readonly<Record<NoteKey, string>> = {
  method: 'Test method, apparatus and kind of motion',
  materials: 'Both materials: composition or designation, treatment, hardness',
  specimens: 'Shape, size and number of both bodies',
  surfaces: 'Both surfaces: texture, lay, and how they were made',
  cleaning: 'Cleaning and storage before the test',
  lubricant: 'Lubricant or liquid, and how it was supplied',
  contact: 'Contact geometry and nominal pressure',
  load: 'Normal load',
  motion: 'Speed, distance and duration',
  environment: 'Temperature, humidity and atmosphere',
  runIn: 'Running-in before the values were taken',
  calibration: 'How force and torque were measured and calibrated',
  evaluation: 'How static and kinetic values were taken from the record',
  repeats: 'Number of repeats, their mean and scatter',
  trace: 'A sample of the record',
  unusual: 'Unusual behaviour: stick–slip, transfer, debris',
  damage: 'Wear or damage seen after the test',
  zeroes: 'Zero of the axial force, before and after',
  blank: 'Torque without contact',
  alignment: 'Alignment of plate and shaft',
  turns: 'Turns behind each point',
  exclusions: 'What was left out, and why',
  checkStandard: 'Check standard measured before and after',
}
