import type { FixtureSpec, Metre } from '../../core/terms/index.ts'
import { counted, printed } from './printed.ts'

const length = (metres: Metre): string => printed(metres, 'length', 4)

/** The bodies with their sizes, as they stand in a sentence: `three balls of 6.35 mm on a plate, …`. */
export function fixtureInWords(fixture: FixtureSpec): string {
  switch (fixture.kind) {
    case 'ballsOnPlate':
      return `${counted(fixture.balls, 'ball')} of ${length(fixture.ballDiameter)} diameter on a flat plate, on a track of ${length(fixture.trackRadius)} radius`
    case 'ballOnPlates':
      return `one ball of ${length(fixture.ballDiameter)} diameter on ${counted(fixture.plates, 'plate')} inclined at ${printed(fixture.inclination, 'angle')} to the axis`
    case 'ballOnBalls':
      return `one ball on three balls of the same diameter, ${length(fixture.ballDiameter)}`
    case 'ringOnPlate':
      return `a ring of ${length(2 * fixture.innerRadius)} inner and ${length(2 * fixture.outerRadius)} outer diameter${fixture.segments > 1 ? ` in ${fixture.segments} segments` : ''} on a flat plate`
    case 'discOnPlate':
      return `a disc of ${length(2 * fixture.radius)} diameter on a flat plate`
    case 'pinsOnDisc':
      return `${counted(fixture.pins, 'pin')} of ${length(fixture.pinDiameter)} diameter with ${fixture.endRadius === undefined ? 'flat ends' : `ends domed to a radius of ${length(fixture.endRadius)}`} on a disc, on a track of ${length(fixture.trackRadius)} radius`
  }
}

/** The same in a few words, for a line below a title. */
export function fixtureInBrief(fixture: FixtureSpec): string {
  switch (fixture.kind) {
    case 'ballsOnPlate':
      return `${counted(fixture.balls, 'ball')} on a plate`
    case 'ballOnPlates':
      return `ball on ${fixture.plates} inclined plates`
    case 'ballOnBalls':
      return 'ball on three balls'
    case 'ringOnPlate':
      return 'ring on a plate'
    case 'discOnPlate':
      return 'disc on a plate'
    case 'pinsOnDisc':
      return `${counted(fixture.pins, 'pin')} on a disc`
  }
}

/** What has to be assumed of the pressure to have a lever arm; empty for bodies on a track. */
export function pressureLawInWords(fixture: FixtureSpec): string {
  if (!('pressure' in fixture)) return ''
  return fixture.pressure === 'uniformPressure'
    ? ' The lever arm is that of an even pressure over the face, as for new faces.'
    : ' The lever arm is the mean radius, that of even wear, as for faces that have run in.'
}
