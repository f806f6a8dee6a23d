import type { ReactNode } from 'react'
import { Button, Header, Menu, MenuItem, MenuSection, MenuTrigger, Popover } from 'react-aria-components'
import type { ChannelName } from '../../../../core/terms/index.ts'
import type { ColumnGuess } from '../../../../server/contract/index.ts'
import { channelChoices, unitChoices, wordsOf } from './channelChoices.ts'

interface ColumnHeadingProps {
  readonly guess: ColumnGuess
  /** What the column is now said to be. */
  readonly mend: (said: { channel: ChannelName | null; unit?: string }) => void
}

const aside = 'left aside'

/** A heading with what it was taken for; a click opens the channels and units that it may be instead. */
export function ColumnHeading({ guess, mend }: ColumnHeadingProps): ReactNode {
  const { heading, channel, unit, source, reason } = guess
  const units = unitChoices(channel)
  const unitWords = unit === '' || channel === null ? '' : `, ${unit}`
  return (
    <MenuTrigger>
      <Button
        className={`column-heading${source === 'guess' ? ' assumed' : ''}`}
        aria-label={`${heading}: ${wordsOf(channel)}${unitWords}; ${reason}. Change it`}
      >
        <span className="column-name">{heading}</span>
        <span className="column-taken">
          {wordsOf(channel)}
          {unitWords}
        </span>
      </Button>
      <Popover className="menu-over" placement="bottom start">
        <Menu className="menu" aria-label={`What “${heading}” is`}>
          <MenuSection selectionMode="single" selectedKeys={[channel ?? aside]} aria-label="Channel">
            <Header>It holds</Header>
            {channelChoices.map((choice) => (
              <MenuItem key={choice.channel} id={choice.channel} onAction={() => mend({ channel: choice.channel })}>
                {choice.words}
              </MenuItem>
            ))}
            <MenuItem id={aside} onAction={() => mend({ channel: null })}>
              {aside}
            </MenuItem>
          </MenuSection>
          {units.length > 0 && (
            <MenuSection selectionMode="single" selectedKeys={[`unit ${unit}`]} aria-label="Unit">
              <Header>written in</Header>
              {units.map((one) => (
                <MenuItem key={one} id={`unit ${one}`} onAction={() => mend({ channel, unit: one })}>
                  {one}
                </MenuItem>
              ))}
            </MenuSection>
          )}
        </Menu>
      </Popover>
    </MenuTrigger>
  )
}
