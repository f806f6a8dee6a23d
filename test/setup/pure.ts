// Pure rooms get time and chance as arguments; whoever reaches for the global ones fails here.
// The property tests' seed is fixed before this: without one fast-check itself would read the clock.

const refuse = (what: string) => (): never => {
  throw new Error(`this room is pure: pass the ${what} in`)
}

Math.random = refuse('seed')
Date.now = refuse('clock')
