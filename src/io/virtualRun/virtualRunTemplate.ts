/** A virtual run to start from: every key that is read, with an example; what is switched off stands behind a #. */
export const virtualRunTemplate = `# A virtual run for Kufe: what a rig that exists only in the computer measures.
# Every value is an example: put in your own. Write quantities with their unit.
# A key behind a # without a blank is switched off; take the # away to use it.

# The same seed gives the same record.
seed: 1

# As in a setup: "kufe setup" explains these sections. They become the setup beside the record.
rig:
  name: virtual rig
  torque:
    accuracy: 0 %
    floor: 1 µN·m
    # Readings are cut here.
    ceiling: 200 mN·m
  axialForce:
    accuracy: 0 %
  angularVelocity:
    ceiling: 300 rad/s
  # M + I·dΩ/dt.
  #inertia: 20 µN·m·s²
  # The shaft winds up before the contact slides.
  #torsionalStiffness: 100 N·m/rad

fixture:
  kind: balls on plate
  balls: 3
  ballDiameter: 6.35 mm
  trackRadius: 15 mm

pair:
  upper:
    name: steel ball
  lower:
    name: invented plate

run:
  axialForce: 5 N
  temperature: 25 °C
  sample: invented sample

# "range": even steps in log speed. "list": speeds: 1 mm/s; 10 mm/s. "ramp": slowest, fastest, duration, law.
speeds:
  kind: range
  slowest: 0.5 mm/s
  fastest: 200 mm/s
  perDecade: 4
  # up, down, or up and down.
  direction: up

sheet:
  # Time of a step; or turns of it, within leastDwell and mostDwell.
  dwell: 10 s
  #turns: 1
  #leastDwell: 5 s
  #mostDwell: 120 s
  samplingRate: 10 Hz
  # The same speeds without contact: none, before, after, or before and after.
  blank: none
  #lift: 1 mm

# The friction that truly acts. Kinds: plateau; power law; Stribeck; "Stribeck, sloped" (also boundaryExponent);
# "Stribeck, exponential" (boundary, plateau, viscous, transition).
friction:
  kind: Stribeck
  boundary: 0.22
  film: 0.09
  filmExponent: 0.35
  transition: 8 mm/s
  sharpness: 1.3

# How load and temperature change that; at the references friction is that of the law.
#conditions:
  # a of F^(-a), and E of exp(E/RT) in kJ/mol.
  #loadExponent: 0.33
  #referenceForce: 5 N
  #activationEnergy: 20
  #referenceTemperature: 25 °C

# Per channel (torque, axialForce, gap, temperature, angularVelocity): white, correlated, correlation, resolution.
noise:
  torque:
    correlated: 4 µN·m
    correlation: 0.6
  axialForce:
    correlated: 5 mN
    correlation: 0.6
  gap:
    white: 0.1 µm
  temperature:
    white: 0.02 K

# What the rig adds to the friction by itself.
signal:
  # Time constant with which the speed nears its target.
  riseTime: 0.25 s
  #residualTorque: 3 µN·m
  #dragAtOneRadianPerSecond: 0.4 µN·m
  #forceZero: 20 mN
  #forceDriftPerHour: 50 mN

# What goes wrong or changes while the record is made.
disturbances:
  frictionRipple:
    amplitude: 2 %
    #order: 1
    #phase: 0°
  forceRipple:
    amplitude: 1 %
    phase: 40°
  #tilt:
    #angle: 0.3°
    #form: tangent
  gapRunOut:
    amplitude: 1 µm
  #stickSlip:
    #below: 2 mm/s
    #frequency: 1.7 Hz
    #share: 25 %
    #scatter: 8 %
  # Instead of stickSlip, with stiffness and inertia of the rig: springStickSlip: { staticExcess: 20 %, dampingRatio: 3 %, scatter: 8 % }
  #hunting:
    #frequency: 3 Hz
    #speedShare: 2 %
    #torque: 0.5 mN·m
  #lostContact:
    #step: 7
    #from: 3 s
    #to: 9 s
    #share: 15 %
  #wear:
    #depthPerMetre: 2 µm
  # Instead of wear, volume by load and distance: archardWear: { specificRate: "2e-5 mm³/(N·m)" }
  #wornSpot:
    #angle: 60°
    #width: 20°
    #excess: 15 %
    #from: 2 m
    #to: 5 m
  #warming:
    #change: 0.5 K
    #timeConstant: 300 s
    #growthPerKelvin: 1.5 µm
  #runningIn:
    #excess: 20 %
    #distance: 0.5 m
  #coatingFailure:
    #distance: 12 m
    #width: 1 m
    #friction: 0.6
  #liquidChange:
    #share: -20 %
    #timeConstant: 300 s

# How the record is put down.
table:
  # comma, semicolon, tab, or aligned.
  separator: comma
  # point or comma.
  decimalMark: point
  # English or German.
  language: English
  # row, square brackets, round brackets, or none.
  units: row
  # SI, or small: 1/min, mN·m, µm, °.
  unitSet: SI
  # UTF-8, UTF-8 with mark, UTF-16LE, UTF-16BE, or Latin-1.
  encoding: UTF-8
  # LF or CRLF.
  lineEnd: LF
  stepColumn: yes
  angleColumn: yes
  repeatHeadings: no
  # Whether the first line says that the record is invented.
  label: yes
  #preamble: Lacquer A, first mounting
`
