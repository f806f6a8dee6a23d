import { askDefaults, decidingDefaults, expectedDefaults, type PlanQuestion } from '../../../src/core/plan/index.ts'

/** A workshop asks about lacquer under steel balls; all of it is invented. */
export const lacquerQuestion: PlanQuestion = {
  title: 'Which lacquer slides easier?',
  rig: {
    name: 'invented rig',
    torque: { floor: 5e-6, ceiling: 0.2, scaleAccuracy: 0.005 },
    axialForce: { floor: 0.01, ceiling: 50, scaleAccuracy: 0.005 },
    angularVelocity: { floor: 1e-5, ceiling: 300 },
    inertia: 2e-5,
  },
  fixture: {
    kind: 'ballsOnPlate',
    balls: 3,
    ballDiameter: 6.35e-3,
    trackRadius: 0.015,
    trackRadiusUncertainty: 2e-5,
  },
  pair: {
    upper: { name: 'steel ball', roughness: 3e-8, elasticModulus: 210e9, poissonRatio: 0.3 },
    lower: { name: 'lacquer on beech', roughness: 2e-7, elasticModulus: 2.5e9, poissonRatio: 0.35, thickness: 6e-5 },
  },
  run: { temperature: 296.15 },
  bears: { upper: { yieldStrength: 2e9 }, lower: { yieldStrength: 6e7 } },
  expected: { ...expectedDefaults, boundary: 0.25, boundarySpread: 1.6 },
  noise: {},
  ask: { ...askDefaults, slowest: 1e-4, fastest: 0.2, leastForce: 0.1, mostForce: 40 },
  deciding: { ...decidingDefaults, samples: ['lacquer A', 'lacquer B'] },
}

/** A kitchen lab asks about oat drinks on silicone. */
export const oatQuestion: PlanQuestion = {
  ...lacquerQuestion,
  title: 'Is the creamy oat drink smoother?',
  rig: {
    ...lacquerQuestion.rig,
    torque: { floor: 1e-6, ceiling: 0.2, scaleAccuracy: 0.005 },
  },
  fixture: {
    kind: 'ballOnPlates',
    plates: 3,
    ballDiameter: 12.7e-3,
    ballDiameterUncertainty: 1e-6,
    inclination: Math.PI / 4,
    inclinationUncertainty: 3.5e-3,
  },
  pair: {
    upper: { name: 'glass ball', roughness: 2e-8, elasticModulus: 64e9, poissonRatio: 0.2 },
    lower: { name: 'soft silicone', roughness: 1.2e-6, elasticModulus: 2e6, poissonRatio: 0.5, thickness: 3e-3 },
  },
  liquid: { name: 'oat drink', viscosity: 3.5e-3, viscosityUncertainty: 2e-4 },
  run: { temperature: 308.15 },
  bears: { upper: {}, lower: {} },
  ask: { ...askDefaults, slowest: 1e-4, fastest: 1, leastForce: 0.05, mostForce: 20 },
  deciding: { ...decidingDefaults, samples: ['plain', 'creamy'], repeatability: 0.12 },
}
