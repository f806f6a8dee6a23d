import { connectionLost, onReturn } from './connection.ts'

/** Tries after the server came back before a part counts as broken: a new build may have taken its place. */
const tries = 2

/**
 * Loads a part of the page; where the server dies before it has come, the part waits and is asked for again when the server is
 * back. What stands on the page already stays there.
 */
export const patiently =
  <T>(load: () => Promise<T>): (() => Promise<T>) =>
  async () => {
    for (let left = tries; ; left--) {
      try {
        return await load()
      } catch (error) {
        if (left === 0) throw error
        await returned()
      }
    }
  }

function returned(): Promise<void> {
  return new Promise((resolve) => {
    const forget = onReturn(() => {
      forget()
      resolve()
    })
    connectionLost()
  })
}
