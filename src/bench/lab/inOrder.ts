/** Works on up to `width` items at once and gives the answers in the order of the items. */
export async function* inOrder<T, R>(
  items: Iterable<T>,
  width: number,
  work: (item: T) => Promise<R>,
): AsyncGenerator<R> {
  const running: Promise<R>[] = []
  try {
    for (const item of items) {
      const answer = work(item)
      answer.catch(() => {}) // told when its turn comes, not before
      running.push(answer)
      if (running.length >= width) yield await (running.shift() as Promise<R>) // there is one: it was just put in
    }
    for (const answer of running) yield await answer
  } finally {
    await Promise.allSettled(running)
  }
}
