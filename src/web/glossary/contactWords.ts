import type { Word } from './word.ts'

export const contactWords: readonly Word[] = [
  {
    key: 'pressure',
    name: 'contact pressure',
    meaning:
      'Hertz: elastic, smooth bodies, a contact small against the ball and thin against the layer. The mean is two thirds of the peak.',
    formula: 'p₀ = (6 W E*² / π³ R²)^⅓',
    source: 'Hertz 1882; Johnson 1985, Contact Mechanics, eqs. 4.22–4.24 (from memory).',
  },
  {
    key: 'contact',
    name: 'contact size',
    meaning: 'Radius of the round spot in which two curved bodies touch.',
    formula: 'a = (3 W R / 4 E*)^⅓',
    source: 'Hertz 1882; Johnson 1985, eq. 4.22 (from memory).',
  },
  {
    key: 'modulus',
    name: 'contact modulus E*',
    meaning: 'Stiffness of both bodies together; the softer one decides.',
    formula: '1/E* = (1 − ν₁²)/E₁ + (1 − ν₂²)/E₂',
    source: 'Johnson 1985 (from memory).',
  },
  {
    key: 'indentation',
    name: 'indentation and coatings',
    meaning: 'How deep the contact sinks in. Under about a tenth of a coating’s thickness its base is hardly felt.',
    formula: 'δ = a² / R;  δ < t / 10',
    source: 'Hertz 1882; Bückle’s rule (hardness of coatings).',
  },
  {
    key: 'layer',
    name: 'soft layer',
    meaning: 'A thin soft layer on a hard base is stiffer than the same body thick: it cannot give way sideways.',
    source: 'Numerical solution for a bonded layer; see the plan for the numbers of yours.',
  },
  {
    key: 'roughness',
    name: 'roughness Rq',
    meaning: 'Root mean square of the heights; of two surfaces the root of the sum of squares counts.',
    formula: 'σ = √(Rq₁² + Rq₂²)',
    source: 'ISO 21920-2 for Rq.',
  },
  {
    key: 'lambda',
    name: 'λ, film over roughness',
    meaning:
      'About 1 the surfaces begin to part, about 3 they are apart. The bounds are conventions; soft contacts part earlier.',
    formula: 'λ = h_min / √(Rq₁² + Rq₂²)',
    source: 'Tallian 1967 (from memory); film laws are named with each number.',
  },
  {
    key: 'film',
    name: 'film thickness',
    meaning:
      'What the liquid builds between moving surfaces; the law depends on whether bodies deform and whether pressure thickens the liquid.',
    formula: 'h / R = k · U^a · W^b · G^c',
    source: 'Hamrock & Dowson 1977, 1978; the number in the plan names its own.',
  },
  {
    key: 'entrainment',
    name: 'entrainment speed',
    meaning:
      'Speed at which liquid is drawn in: the mean of both surfaces’ speeds past the contact. In pure sliding half the sliding speed.',
    formula: 'u = (u₁ + u₂) / 2 = v / 2',
    source: 'Definition.',
  },
  {
    key: 'boundaryRegime',
    name: 'boundary friction',
    meaning: 'The surfaces touch; chemistry and texture decide, speed hardly does.',
    source: 'Stribeck 1902; λ under about 1.',
  },
  {
    key: 'mixedRegime',
    name: 'mixed friction',
    meaning: 'Part of the load rests on the film, part on touching peaks: friction falls with speed.',
    source: 'Stribeck 1902; λ about 1 to 3.',
  },
  {
    key: 'filmRegime',
    name: 'full film',
    meaning: 'The liquid carries the load: friction is its shear and rises again with speed.',
    source: 'Stribeck 1902; λ over about 3.',
  },
  {
    key: 'hersey',
    name: 'ηv/W',
    meaning: 'Speed and viscosity over load: one axis for curves of one pair at several viscosities and loads.',
    formula: 'ηv / W',
    source: 'After Hersey 1914 (from memory).',
  },
  {
    key: 'viscosity',
    name: 'viscosity',
    meaning: 'Shear stress over shear rate, at the temperature of the test; many liquids thin with shear.',
    formula: 'η = τ / γ̇',
    source: 'Definition.',
  },
  {
    key: 'wear',
    name: 'wear rate',
    meaning: 'Worn volume per load and distance. Good to a factor of ten at best unless measured on this pair.',
    formula: 'k = V / (W·s)',
    source: 'Archard 1953.',
  },
  {
    key: 'flash',
    name: 'flash temperature',
    meaning: 'How much hotter the contact gets than the bodies, from the heat of friction in a small spot.',
    formula: 'ΔT ~ µ·W·v / (4·k·a) for a slow contact',
    source: 'Blok 1937, Jaeger 1942 (from memory).',
  },
]
