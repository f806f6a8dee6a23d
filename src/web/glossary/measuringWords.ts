// Long because it is one table: the words of measuring, from the rig to the point.
import type { Word } from './word.ts'

export const measuringWords: readonly Word[] = [
  {
    key: 'friction',
    name: 'friction coefficient µ',
    meaning:
      'Friction force over normal force. It belongs to the pair, its speed, load, temperature and history, not to one material.',
    formula: 'µ = M / (c·r·F)',
    source: 'Definition; M torque, c load factor, r lever arm, F axial force of this fixture.',
  },
  {
    key: 'rig',
    name: 'rig',
    meaning:
      'What the rheometer can do: range, resolution and accuracy of torque, axial force and speed, inertia, stiffness.',
    source: 'Data sheet or calibration.',
  },
  {
    key: 'fixture',
    name: 'fixture',
    meaning: 'The bodies and their geometry: it turns torque and axial force into friction.',
    source: 'Definition.',
  },
  {
    key: 'pair',
    name: 'pair',
    meaning: 'The two surfaces that slide on each other and what lies between them.',
    source: 'Definition.',
  },
  {
    key: 'load',
    name: 'load',
    meaning: 'Axial force is what the rig presses with; the normal load is what one contact carries of it.',
    formula: 'W = c·F / n',
    source: 'Balance of forces; on plates inclined by α each of n contacts carries F / (n cos α).',
  },
  {
    key: 'lever',
    name: 'lever arm',
    meaning:
      'Distance of the friction force from the axis. For a ring it depends on how the pressure spreads, new or run in.',
    formula: 'r (track);  r = ⅔ (R₂³ − R₁³) / (R₂² − R₁²) or ½ (R₁ + R₂) (ring)',
    source: 'Mechanics of friction discs: uniform pressure and uniform wear.',
  },
  {
    key: 'speed',
    name: 'sliding speed',
    meaning: 'Speed of one surface over the other in the contact.',
    formula: 'v = Ω·r',
    source: 'Definition.',
  },
  {
    key: 'step',
    name: 'step',
    meaning: 'A stretch of the record at one commanded speed.',
    source: 'Definition.',
  },
  {
    key: 'point',
    name: 'point',
    meaning: 'One step reduced to one friction value with its uncertainties, its turns and its remarks.',
    source: 'Definition.',
  },
  {
    key: 'record',
    name: 'record',
    meaning: 'One raw file, kept byte for byte. Results are made from it again at any time.',
    source: 'Definition.',
  },
  {
    key: 'blank',
    name: 'blank',
    meaning:
      'A stretch or record without contact: what the torque shows then (bearing, drag of the liquid) is taken off.',
    formula: 'M_blank = M₀ + k·Ω + what repeats every turn',
    source: 'Common practice, no source.',
  },
  {
    key: 'zero',
    name: 'zero of the axial force',
    meaning:
      'What the force shows while hanging free, with its drift. An error of it moves all friction values together.',
    formula: 'δµ / µ = −δF₀ / F',
    source: 'Propagation through the definition of µ.',
  },
  {
    key: 'turns',
    name: 'whole turns',
    meaning:
      'A tilted plate lifts and lowers friction once a turn. Over whole turns that averages out; over a part of a turn it shifts the value.',
    formula: 'shift ≤ tan β · |sin πN| / (πN)',
    source: 'Mean of a sine over N turns; β tilt of the plate.',
  },
  {
    key: 'distance',
    name: 'sliding distance',
    meaning: 'How far the surfaces have slid on each other, running in included.',
    formula: 's = Σ v·t',
    source: 'Definition.',
  },
  {
    key: 'conditioning',
    name: 'running in',
    meaning:
      'Sliding before the sweep until friction no longer drifts: fresh peaks are worn, films built, lubricant spread.',
    source: 'Common practice, no source.',
  },
  {
    key: 'runSheet',
    name: 'run sheet',
    meaning:
      'The ordered steps and checks of one record, from cleaning to taking apart. The instrument’s manual comes first.',
    source: 'Made from the plan.',
  },
  {
    key: 'coupling',
    name: 'coupling',
    meaning:
      'Joins shaft and fixture. A compliant one aligns the faces and shares the load; under a high load a stiff one holds.',
    source: 'Common practice, no source.',
  },
  {
    key: 'believable',
    name: 'believable speeds',
    meaning: 'The range of speeds in which the curve may be believed, each end with the limit that sets it.',
    source: 'The remarks of the points, and the bias that a zero, a drag or a partial turn could leave.',
  },
  {
    key: 'stickSlipTerm',
    name: 'stick–slip',
    meaning:
      'The contact sticks and jumps: friction falls with speed faster than the drive can follow. The mean is no kinetic friction.',
    formula: 'f ≈ √(k / I) / 2π',
    source: 'Oscillator of torsional stiffness k and inertia I.',
  },
  {
    key: 'windUpTerm',
    name: 'wind-up',
    meaning: 'The shaft twists under torque, so the contact lags behind the drive by an angle.',
    formula: 'φ = M / k',
    source: 'Torsion spring.',
  },
  {
    key: 'autocorrelation',
    name: 'autocorrelation time',
    meaning:
      'How long readings remember each other. A step is worth as many independent readings as it holds such times.',
    formula: 'τ = 1 + 2 Σ ρ(k);  n_eff = n / τ',
    source: 'Statistics of correlated series (Bayley & Hammersley 1946, from memory).',
  },
  {
    key: 'ownAndShared',
    name: 'own and shared uncertainty',
    meaning:
      'Own differs from point to point and shrinks when points are averaged. Shared (scales, zeroes, lever) moves all points of a rig and fixture together and does not.',
    formula: 'u = √(u_own² + Σ u_shared²)',
    source: 'JCGM 100:2008, law of propagation of uncertainty.',
  },
  {
    key: 'interval',
    name: '95 % interval',
    meaning:
      'Where the value lies with 95 % confidence; with few degrees of freedom it is wider than twice the uncertainty.',
    formula: 'value ± t₀.₉₇₅(ν) · u',
    source: 'JCGM 100:2008, annex G.',
  },
  {
    key: 'remark',
    name: 'remark',
    meaning:
      'A finding with the number that tripped it. It never blocks and never vanishes: a person answers it, or better data.',
    source: 'Limits of this program, each with its reason.',
  },
  {
    key: 'mend',
    name: 'moved window',
    meaning: 'Rows of a step that a person chose instead of the program. Who, when and why stay in the history.',
    source: 'Definition.',
  },
  {
    key: 'version',
    name: 'version',
    meaning: 'Nothing that is kept is ever edited: each change is a new version beside the old ones.',
    source: 'Definition.',
  },
]
