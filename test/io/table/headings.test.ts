import { describe, expect, test } from 'vitest'
import type { ChannelName } from '../../../src/core/terms/index.ts'
import { type ColumnSense, senseOf } from '../../../src/io/table/columnSense.ts'

const rpm = (2 * Math.PI) / 60

function sensed(heading: string, unitBelow = ''): [ChannelName | string, number] {
  const sense: ColumnSense = senseOf(heading, unitBelow)
  return sense.kind === 'fits' ? [sense.channel, sense.unit?.factor ?? 1] : [sense.kind, 0]
}

// Words of the trade in English and German (common practice, no source); factors by the definition of each unit.
const headings: [string, ChannelName, number][] = [
  ['t [min]', 'time', 60],
  ['t / s', 'time', 1],
  ['Time [ms]', 'time', 1e-3],
  ['TIME (s)', 'time', 1],
  ['Elapsed time, h', 'time', 3600],
  ['Zeit in s', 'time', 1],
  ['Messzeit [s]', 'time', 1],
  ['time_s', 'time', 1],
  ['Step', 'step', 1],
  ['Step number', 'step', 1],
  ['Schritt', 'step', 1],
  ['Abschnitt [-]', 'step', 1],
  ['Segment', 'step', 1],
  ['Intervall', 'step', 1],
  ['Torque (mN·m)', 'torque', 1e-3],
  ['M / mN·m', 'torque', 1e-3],
  ['M [µNm]', 'torque', 1e-6],
  ['Drehmoment [mNm]', 'torque', 1e-3],
  ['Reibmoment in N·m', 'torque', 1],
  ['Messdrehmoment [mNm]', 'torque', 1e-3],
  ['torque_mNm', 'torque', 1e-3],
  ['Friction torque [µN.m]', 'torque', 1e-6],
  ['T [N·m]', 'torque', 1],
  ['Friction [mN·m]', 'torque', 1e-3],
  ['Normalkraft [N]', 'axialForce', 1],
  ['Normal force (mN)', 'axialForce', 1e-3],
  ['Axial force / N', 'axialForce', 1],
  ['Axialkraft in N', 'axialForce', 1],
  ['Fn [mN]', 'axialForce', 1e-3],
  ['F_N [N]', 'axialForce', 1],
  ['FN (N)', 'axialForce', 1],
  ['Fz [N]', 'axialForce', 1],
  ['F [N]', 'axialForce', 1],
  ['F_{N} [N]', 'axialForce', 1],
  ['Load [kgf]', 'axialForce', 9.80665],
  ['Drehzahl [1/min]', 'angularVelocity', rpm],
  ['Drehzahl [U/min]', 'angularVelocity', rpm],
  ['Drehzahl [1/s]', 'angularVelocity', 2 * Math.PI],
  ['rotational speed [rpm]', 'angularVelocity', rpm],
  ['Rotational speed [1/min]', 'angularVelocity', rpm],
  ['n [min⁻¹]', 'angularVelocity', rpm],
  ['n / 1/min', 'angularVelocity', rpm],
  ['speed [rpm]', 'angularVelocity', rpm],
  ['Speed (rad/s)', 'angularVelocity', 1],
  ['Winkelgeschwindigkeit [rad/s]', 'angularVelocity', 1],
  ['Angular velocity [1/s]', 'angularVelocity', 1],
  ['ω [rad/s]', 'angularVelocity', 1],
  ['Ω [rad/s]', 'angularVelocity', 1],
  ['\u2126 [1/s]', 'angularVelocity', 1],
  ['omega (deg/s)', 'angularVelocity', Math.PI / 180],
  ['sliding speed [mm/s]', 'slidingSpeed', 1e-3],
  ['Gleitgeschwindigkeit [m/s]', 'slidingSpeed', 1],
  ['speed [mm/s]', 'slidingSpeed', 1e-3],
  ['v [m/s]', 'slidingSpeed', 1],
  ['Geschwindigkeit in mm/s', 'slidingSpeed', 1e-3],
  ['Spalt [mm]', 'gap', 1e-3],
  ['Spaltweite [µm]', 'gap', 1e-6],
  ['Spalthöhe [mm]', 'gap', 1e-3],
  ['gap (µm)', 'gap', 1e-6],
  ['Gap um', 'gap', 1e-6],
  ['d [mm]', 'gap', 1e-3],
  ['h / mm', 'gap', 1e-3],
  ['Temperatur [°C]', 'temperature', 1],
  ['T [°C]', 'temperature', 1],
  ['T / K', 'temperature', 1],
  ['Temp. (degC)', 'temperature', 1],
  ['Probentemperatur [°C]', 'temperature', 1],
  ['ϑ [°C]', 'temperature', 1],
  ['Reibkraft [N]', 'frictionForce', 1],
  ['friction force (mN)', 'frictionForce', 1e-3],
  ['FF [N]', 'frictionForce', 1],
  ['Reibungskraft in N', 'frictionForce', 1],
  ['Friction [N]', 'frictionForce', 1],
  ['Winkel [°]', 'angle', Math.PI / 180],
  ['angle [rad]', 'angle', 1],
  ['deflection angle [mrad]', 'angle', 1e-3],
  ['Auslenkwinkel / mrad', 'angle', 1e-3],
  ['phi [deg]', 'angle', Math.PI / 180],
  ['φ [rad]', 'angle', 1],
]

test.for(headings)('%s is %s', ([heading, channel, factor]) => {
  const [found, times] = sensed(heading)
  expect(found).toBe(channel)
  expect(Math.abs(times / factor - 1)).toBeLessThan(1e-15)
})

test.for(headings.filter(([heading]) => / \[[^\]]+\]$/.test(heading)))(
  '%s with its unit in the row below',
  ([heading, channel]) => {
    const [, words, unit] = /^(.*) \[([^\]]+)\]$/.exec(heading) ?? []
    expect(sensed(words, unit)[0]).toBe(channel)
    expect(sensed(words, `[${unit}]`)[0]).toBe(channel)
  },
)

describe('what is not taken for a measured channel', () => {
  test.for([
    'Set speed [rpm]',
    'Solldrehzahl [1/min]',
    'Target normal force [N]',
    'Normalkraft Vorgabe [N]',
    'Torque std [mN·m]',
    'Temperature deviation [K]',
    'Room temperature [°C]',
    'Raumtemperatur [°C]',
    'Umgebungstemperatur [°C]',
    'Friction coefficient [-]',
    'Coefficient of friction',
    'Shear stress [Pa]',
    'Max. torque [N·m]',
    'Comment',
    'Reibwert',
    'µ',
    '',
  ])('%s', (heading) => {
    expect(['aside', 'unitUnfit', 'unitOnly']).toContain(senseOf(heading, '').kind)
  })

  test('each says why', () => {
    expect(senseOf('Set speed [rpm]', '').reason).toContain('commanded')
    expect(senseOf('Room temperature [°C]', '').reason).toContain('surroundings')
    expect(senseOf('Comment', '').reason).toContain('neither words nor unit')
    expect(senseOf('', '').reason).toContain('no heading')
  })
})

describe('what is asked', () => {
  test.for([
    ['Torque', '', 'unitMissing', ['torque']],
    ['F_N', '', 'unitMissing', ['axialForce']],
    ['T', '', 'unitMissing', ['torque', 'temperature']],
    ['speed', '', 'unitMissing', ['angularVelocity', 'slidingSpeed']],
    ['Torque [furlong]', '', 'unitUnknown', ['torque']],
    ['Torque', 'mNn', 'unitUnknown', ['torque']],
    ['Torque [s]', '', 'unitUnfit', ['torque']],
    ['speed [1/s]', '', 'unitUnclear', ['angularVelocity']],
  ] as [string, string, string, ChannelName[]][])('%s, %s: %s', ([heading, below, kind, channels]) => {
    const sense = senseOf(heading, below)
    expect(sense.kind).toBe(kind)
    expect('channels' in sense ? [...sense.channels].sort() : []).toEqual([...channels].sort())
  })

  test('the unit decides between two senses', () => {
    expect(sensed('Speed', '1/min')[0]).toBe('angularVelocity')
    expect(sensed('Speed', 'mm/s')[0]).toBe('slidingSpeed')
    expect(sensed('T', '°C')[0]).toBe('temperature')
    expect(sensed('T', 'N·m')[0]).toBe('torque')
    expect(sensed('θ', 'K')[0]).toBe('temperature')
    expect(sensed('θ', 'rad')[0]).toBe('angle')
  })
})

test('a heading of a hundred thousand letters is soon dealt with', () => {
  const started = performance.now()
  senseOf('('.repeat(100_000), '')
  senseOf('a / '.repeat(30_000), 's'.repeat(100_000))
  expect(performance.now() - started).toBeLessThan(500)
})
