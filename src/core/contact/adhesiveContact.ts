import {
  doubtAbove,
  doubtsFound,
  type Explained,
  type Metre,
  type Newton,
  type Pascal,
  type Ratio,
} from '../terms/index.ts'
import { adhesionScale, type StickySphere } from './adhesionScale.ts'
import { dmtApproach, dmtPullOff, dmtRadius } from './dmt.ts'
import { jkrApproach, jkrPullOff, jkrRadius } from './jkr.ts'
import { maugisContact, maugisParameter, maugisPullOff } from './maugis.ts'
import { baseFelt, largeStrain } from './sphereDoubts.ts'
import { taborParameter, usualSpacing } from './tabor.ts'

/** Which law of adhesion holds. */
export type AdhesionRegime = 'jkr' | 'dmt' | 'between'

/** Tabor parameters over which JKR and under which DMT holds (Johnson & Greenwood 1997, from memory). */
export const taborBounds = { dmtBelow: 0.1, jkrAbove: 5 } as const

/** What one law says of a contact. */
export interface AdhesionAnswer {
  /** null where the law says that the pull has parted the bodies. */
  readonly contactRadius: Metre | null
  /** Negative where the bodies are stretched towards each other. */
  readonly approach: Metre | null
  /** Positive. */
  readonly pullOff: Newton
}

/** A sphere that sticks, by the law of its regime and by the others. */
export interface AdhesiveContact extends Explained, AdhesionAnswer {
  readonly regime: AdhesionRegime
  readonly tabor: Ratio
  /** Load over the area of the contact; inside it the pressure turns into a pull towards the edge. */
  readonly meanPressure: Pascal | null
  readonly jkr: AdhesionAnswer
  readonly dmt: AdhesionAnswer
}

/** Circumstances that make a law of adhesion doubtful. */
export interface StickyCircumstances {
  readonly thickness?: Metre
  /** Root-mean-square roughness of both surfaces together. */
  readonly roughness?: Metre
  /** Spacing of atoms at rest. */
  readonly spacing?: Metre
}

/** Contact of a sticky sphere at a load, a pull being negative. */
export function adhesiveContact(
  load: Newton,
  sphere: StickySphere,
  circumstances: StickyCircumstances = {},
): AdhesiveContact {
  if (!Number.isFinite(load)) throw new RangeError(`load must be finite, got ${load} N`)
  const tabor = taborParameter(sphere, circumstances.spacing ?? usualSpacing)
  const regime = tabor > taborBounds.jkrAbove ? 'jkr' : tabor < taborBounds.dmtBelow ? 'dmt' : 'between'
  const jkr = byJkr(load, sphere)
  const dmt = byDmt(load, sphere)
  const answer = regime === 'jkr' ? jkr : regime === 'dmt' ? dmt : byMaugis(load, sphere, tabor)
  const { contactRadius } = answer
  return {
    ...answer,
    regime,
    tabor,
    meanPressure: contactRadius === null || contactRadius === 0 ? null : load / (Math.PI * contactRadius ** 2),
    jkr,
    dmt,
    ...laws[regime],
    valid:
      'Elastic, smooth, frictionless, at rest. Sliding and contamination mostly weaken adhesion, rubber sticks more when it ' +
      'is parted than when it is joined; pull-off does not depend on stiffness.',
    doubts: doubtsFound(
      contactRadius === null ? undefined : largeStrain(contactRadius, sphere.radius),
      contactRadius === null ? undefined : baseFelt(contactRadius, circumstances.thickness),
      betweenLaws(regime, tabor),
      roughAgainstStretch(sphere, circumstances.roughness),
    ),
  }
}

const laws = {
  jkr: {
    law: 'Johnson, Kendall and Roberts (JKR)',
    source: 'Johnson, Kendall & Roberts 1971, Proc. R. Soc. A 324:301 (from memory)',
  },
  dmt: {
    law: 'Derjaguin, Muller and Toporov (DMT)',
    source: 'Derjaguin, Muller & Toporov 1975, J. Colloid Interface Sci. 53:314; Maugis 1992 (from memory)',
  },
  between: {
    law: 'Maugis’ transition',
    source: 'Maugis 1992, J. Colloid Interface Sci. 150:243; λ after Johnson & Greenwood 1997 (from memory)',
  },
} as const

function byJkr(load: Newton, sphere: StickySphere): AdhesionAnswer {
  const pullOff = jkrPullOff(sphere)
  if (load < -pullOff) return { contactRadius: null, approach: null, pullOff }
  const contactRadius = jkrRadius(load, sphere)
  return { contactRadius, approach: jkrApproach(contactRadius, sphere), pullOff }
}

function byDmt(load: Newton, sphere: StickySphere): AdhesionAnswer {
  const pullOff = dmtPullOff(sphere)
  if (load < -pullOff) return { contactRadius: null, approach: null, pullOff }
  const contactRadius = dmtRadius(load, sphere)
  return { contactRadius, approach: dmtApproach(contactRadius, sphere), pullOff }
}

function byMaugis(load: Newton, sphere: StickySphere, tabor: Ratio): AdhesionAnswer {
  const scale = adhesionScale(sphere)
  const parameter = maugisParameter(tabor)
  const pullOff = scale.load * maugisPullOff(parameter)
  if (load < -pullOff) return { contactRadius: null, approach: null, pullOff }
  const scaled = maugisContact(load / scale.load, parameter)
  return { contactRadius: scale.radius * scaled.contactRadius, approach: scale.approach * scaled.approach, pullOff }
}

const betweenLaws = (regime: AdhesionRegime, tabor: Ratio) =>
  regime === 'between'
    ? ({
        kind: 'betweenLaws',
        seen: tabor,
        limit: taborBounds.jkrAbove,
        sentence: `The Tabor parameter, ${tabor.toPrecision(2)}, lies between DMT (under 0.1) and JKR (over 5); both are given beside the transition.`,
      } as const)
    : undefined

/** Adhesion pulls asperities down only as far as it stretches a smooth contact. Order of magnitude; common practice, no source. */
function roughAgainstStretch(sphere: StickySphere, roughness: Metre | undefined) {
  if (roughness === undefined) return undefined
  if (!(roughness >= 0)) throw new RangeError(`roughness must be zero or more, got ${roughness} m`)
  return doubtAbove({
    kind: 'roughContact',
    seen: roughness / adhesionScale(sphere).approach,
    limit: 0.1,
    say: (seen) =>
      `Roughness is ${seen} of the length over which adhesion stretches this contact: the real pull is smaller, often none is left.`,
  })
}
