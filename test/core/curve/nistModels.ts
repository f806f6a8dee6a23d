/** Models of the certified nonlinear problems: f(b, x); two predictors come as a pair. */
export const nistModels: Readonly<Record<string, (b: ArrayLike<number>, x: number, x2: number) => number>> = {
  Bennett5: (b, x) => b[0] * (b[1] + x) ** (-1 / b[2]),
  BoxBOD: (b, x) => b[0] * (1 - Math.exp(-b[1] * x)),
  Chwirut2: (b, x) => Math.exp(-b[0] * x) / (b[1] + b[2] * x),
  DanWood: (b, x) => b[0] * x ** b[1],
  Eckerle4: (b, x) => (b[0] / b[1]) * Math.exp(-0.5 * ((x - b[2]) / b[1]) ** 2),
  Gauss1: gauss,
  Gauss2: gauss,
  Gauss3: gauss,
  Hahn1: (b, x) => (b[0] + x * (b[1] + x * (b[2] + x * b[3]))) / (1 + x * (b[4] + x * (b[5] + x * b[6]))),
  Kirby2: (b, x) => (b[0] + x * (b[1] + x * b[2])) / (1 + x * (b[3] + x * b[4])),
  Lanczos1: lanczos,
  Lanczos2: lanczos,
  Lanczos3: lanczos,
  MGH10: (b, x) => b[0] * Math.exp(b[1] / (x + b[2])),
  MGH17: (b, x) => b[0] + b[1] * Math.exp(-x * b[3]) + b[2] * Math.exp(-x * b[4]),
  Misra1a: (b, x) => -b[0] * Math.expm1(-b[1] * x),
  Misra1c: (b, x) => b[0] * (1 - (1 + 2 * b[1] * x) ** -0.5),
  Misra1d: (b, x) => (b[0] * b[1] * x) / (1 + b[1] * x),
  Nelson: (b, x, x2) => b[0] - b[1] * x * Math.exp(-b[2] * x2),
  Rat42: (b, x) => b[0] / (1 + Math.exp(b[1] - b[2] * x)),
  Rat43: (b, x) => b[0] / (1 + Math.exp(b[1] - b[2] * x)) ** (1 / b[3]),
}

function gauss(b: ArrayLike<number>, x: number): number {
  return (
    b[0] * Math.exp(-b[1] * x) +
    b[2] * Math.exp(-(((x - b[3]) / b[4]) ** 2)) +
    b[5] * Math.exp(-(((x - b[6]) / b[7]) ** 2))
  )
}

function lanczos(b: ArrayLike<number>, x: number): number {
  return b[0] * Math.exp(-b[1] * x) + b[2] * Math.exp(-b[3] * x) + b[4] * Math.exp(-b[5] * x)
}
