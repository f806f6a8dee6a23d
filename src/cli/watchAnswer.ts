import type { AddEvent } from '../bench/lab/index.ts'
import type { Problem } from '../core/terms/index.ts'
import { clearedLine, eventDocument, placedProblems } from './addAnswer.ts'
import { sayProblems } from './complain.ts'
import { addEventInWords } from './show/addInWords.ts'
import type { Desk } from './verb.ts'

/** Tells what happens in a folder that is watched, at once: a line for people, or a line of JSON for machines. */
export function watchAnswer(folder: string, { screen }: Desk, json: boolean) {
  const say = (event: object, words: string): void => screen.out(json ? `${JSON.stringify(event)}\n` : words)
  say({ what: 'watching', folder }, `Watching ${folder}; Ctrl+C ends it.\n`)
  return {
    onAdd: (event: AddEvent): void => {
      if (screen.watched) screen.err(clearedLine)
      if ('problems' in event) sayProblems(placedProblems(event), screen)
      say(eventDocument(event), addEventInWords(event, screen))
    },
    onTrouble: (problems: readonly Problem[]): void => {
      sayProblems(problems, screen)
      say({ what: 'waiting', problems }, 'waiting     to try again\n')
    },
  }
}
