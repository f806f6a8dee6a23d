import type { Dimension } from '../../core/quantity/index.ts'
import type { ChannelName } from '../../core/terms/index.ts'

/** Dimension that the unit of each channel must have. */
export const channelDimensions: Readonly<Record<ChannelName, Dimension>> = {
  time: 'time',
  step: 'count',
  angularVelocity: 'angularVelocity',
  slidingSpeed: 'velocity',
  torque: 'torque',
  frictionForce: 'force',
  axialForce: 'force',
  angle: 'angle',
  gap: 'length',
  temperature: 'temperature',
}

/** Words for a channel, in lower case and without umlauts; symbols as written, upper and lower case differing. */
export interface Term {
  readonly channel: ChannelName
  readonly words: readonly string[]
  readonly symbols: readonly string[]
  /** How to read 1/s where these words stand: as radians, as turns, or by asking. */
  readonly perSecond?: 'radians' | 'turns' | 'ask'
}

const list = (text: string): readonly string[] => text.split(',').map((word) => word.trim())

/** Words of the trade, English and German (common practice, no source). The unit decides where a word has two senses. */
export const terms: readonly Term[] = [
  {
    channel: 'time',
    words: list(
      'time, elapsed time, test time, run time, measuring time, measurement time, total time, zeit, messzeit, versuchszeit, prufzeit, laufzeit, gesamtzeit, messdauer, versuchsdauer',
    ),
    symbols: ['t'],
  },
  {
    channel: 'step',
    words: list(
      'step, step number, step no, step nr, schritt, schrittnummer, schritt nr, abschnitt, abschnittsnummer, segment, segment number, section, interval, interval number, intervall, intervallnummer, stage, stufe',
    ),
    symbols: [],
  },
  {
    channel: 'angularVelocity',
    words: list('angular velocity, angular speed, winkelgeschwindigkeit, omega'),
    symbols: ['ω', 'Ω'],
    perSecond: 'radians',
  },
  {
    channel: 'angularVelocity',
    words: list(
      'rotational speed, rotation speed, rotary speed, rotational velocity, speed of rotation, rotation rate, rotational frequency, spindle speed, shaft speed, motor speed, rpm, drehzahl, drehfrequenz, umdrehungszahl, drehgeschwindigkeit',
    ),
    symbols: ['n'],
    perSecond: 'turns',
  },
  { channel: 'angularVelocity', words: list('speed, velocity, geschwindigkeit'), symbols: ['v'], perSecond: 'ask' },
  {
    channel: 'slidingSpeed',
    words: list(
      'sliding speed, sliding velocity, slip speed, slip velocity, surface speed, track speed, linear speed, linear velocity, circumferential speed, peripheral speed, relative speed, relative velocity, gleitgeschwindigkeit, umfangsgeschwindigkeit, bahngeschwindigkeit, relativgeschwindigkeit, speed, velocity, geschwindigkeit',
    ),
    symbols: ['v', 'vs', 'v_s', 'vg', 'v_g'],
  },
  {
    channel: 'torque',
    words: list(
      'torque, moment, friction torque, frictional torque, friction moment, drehmoment, reibmoment, reibungsmoment, friction, reibung',
    ),
    symbols: ['M', 'T', 'Md', 'M_d', 'Mr', 'M_r', 'M_R', 'Mf', 'M_f', 'M_F'],
  },
  {
    channel: 'axialForce',
    words: list(
      'normal force, axial force, normal load, axial load, contact force, vertical force, thrust, load, force, normalkraft, axialkraft, anpresskraft, andruckkraft, auflast, last, belastung, kraft',
    ),
    symbols: ['Fn', 'FN', 'F_n', 'F_N', 'Fz', 'FZ', 'F_z', 'F_Z', 'Fa', 'FA', 'F_a', 'F_A', 'Fax', 'F_ax', 'F', 'W'],
  },
  {
    channel: 'frictionForce',
    words: list(
      'friction force, frictional force, force of friction, tangential force, lateral force, transverse force, shear force, traction force, reibkraft, reibungskraft, tangentialkraft, querkraft, friction, reibung',
    ),
    symbols: ['FF', 'Ff', 'F_f', 'F_F', 'FR', 'Fr', 'F_r', 'F_R', 'Ft', 'FT', 'F_t', 'F_T', 'Fx', 'F_x'],
  },
  {
    channel: 'angle',
    words: list(
      'angle, rotation angle, angle of rotation, rotational angle, deflection angle, angular position, angular displacement, deflection, rotation, position, phi, winkel, drehwinkel, auslenkwinkel, auslenkungswinkel, verdrehwinkel, winkelposition, auslenkung',
    ),
    symbols: ['φ', 'ϕ', 'Φ', 'θ', 'Θ', 'α'],
  },
  {
    channel: 'gap',
    words: list(
      'gap, gap height, gap width, gap size, height, separation, axial position, axial displacement, spalt, spaltweite, spalthohe, spalthoehe, spaltbreite, spaltmass, hohe, hoehe, abstand',
    ),
    symbols: ['d', 'h', 'H'],
  },
  { channel: 'temperature', words: list('temperature, temp, temperatur'), symbols: ['T', 'ϑ', 'θ', 'Θ', 'T_s', 'Ts'] },
]

/** Ends of German compounds: Messdrehmoment, Probentemperatur. */
export const compoundEnds: readonly string[] = list(
  'drehmoment, reibmoment, normalkraft, axialkraft, reibkraft, reibungskraft, drehzahl, winkelgeschwindigkeit, gleitgeschwindigkeit, spalt, temperatur, winkel, zeit',
)

/** Words that make a column something else than the measured channel, with what they make it. */
export const otherMeanings: readonly { readonly words: readonly string[]; readonly meaning: string }[] = [
  {
    words: list(
      'set, setpoint, target, command, commanded, demand, demanded, nominal, desired, preset, requested, soll, sollwert, vorgabe',
    ),
    meaning: 'what was commanded, not what was measured',
  },
  {
    words: list(
      'deviation, std, stdev, sd, rms, variance, uncertainty, error, abweichung, standardabweichung, fehler, unsicherheit, min, max, minimum, maximum, limit, grenze, grenzwert, amplitude, drift',
    ),
    meaning: 'a statistic or a limit, not the reading itself',
  },
  {
    words: list('room, ambient, environment, laboratory, lab, outdoor, raum, umgebung, labor'),
    meaning: 'the surroundings, not the contact',
  },
  {
    words: list('coefficient, factor, ratio, stress, strain, viscosity, power, energy, koeffizient, spannung, energie'),
    meaning: 'another quantity',
  },
  { words: list('remaining, clock, uhrzeit, restzeit, wartezeit, date, datum'), meaning: 'another clock' },
]

/** German compounds begin with these where the second part of the word is no measured channel. */
export const otherBeginnings: readonly { readonly begin: string; readonly meaning: string }[] = [
  { begin: 'soll', meaning: 'what was commanded, not what was measured' },
  { begin: 'vorgabe', meaning: 'what was commanded, not what was measured' },
  { begin: 'raum', meaning: 'the surroundings, not the contact' },
  { begin: 'umgebung', meaning: 'the surroundings, not the contact' },
  { begin: 'grenz', meaning: 'a statistic or a limit, not the reading itself' },
]

/** With a word for time these mean the clock of one step, used only where no clock of the record exists. */
export const stepWords: readonly string[] = list(
  'step, interval, segment, section, stage, schritt, abschnitt, abschnitts, intervall, stufen, segmentzeit, schrittzeit, abschnittszeit, intervallzeit, stufenzeit',
)
