/** What a file's name says about its sample and replicate: `lacquer-a-2.csv` is the second of `lacquer-a`. */
export function nameGuess(file: string): { readonly sample: string; readonly replicate: number | null } {
  const bare = file.replace(/\.[a-z0-9]{1,8}$/i, '').trim()
  const found = /^(.*?\p{L}.*?)(?:[\s._-]+(?:no|nr|run|rep))?[\s._#-]*0*(\d{1,4})$/iu.exec(bare)
  if (found === null) return { sample: bare, replicate: null }
  const [, sample, number] = found
  const replicate = Number(number)
  return replicate >= 1 ? { sample: sample.replace(/[\s._-]+$/, ''), replicate } : { sample: bare, replicate: null }
}
