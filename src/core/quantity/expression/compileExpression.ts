import { knownFunctions } from './functions.ts'
import type { ExpressionNode, Operation } from './node.ts'

/** Value of a formula for the values of its quantities, in the order of the names that it was parsed with. */
export type Formula = (values: ArrayLike<number>) => number

const operations: Readonly<Record<Operation, (a: Formula, b: Formula) => Formula>> = {
  '+': (a, b) => (x) => a(x) + b(x),
  '-': (a, b) => (x) => a(x) - b(x),
  '*': (a, b) => (x) => a(x) * b(x),
  '/': (a, b) => (x) => a(x) / b(x),
  '^': (a, b) => (x) => a(x) ** b(x),
}

/** Makes a tree of functions out of a tree of nodes, so that a million trials do not walk the nodes a million times. */
export function compileExpression(node: ExpressionNode): Formula {
  switch (node.is) {
    case 'number': {
      const { value } = node
      return () => value
    }
    case 'name': {
      const { index } = node
      return (x) => x[index]
    }
    case 'negative': {
      const of = compileExpression(node.of)
      return (x) => -of(x)
    }
    case 'operation':
      return operations[node.operation](compileExpression(node.left), compileExpression(node.right))
    case 'call': {
      const { value } = knownFunctions[node.called]
      const given = node.given.map(compileExpression)
      if (given.length === 1) {
        const [only] = given
        return (x) => value(only(x))
      }
      return (x) => value(...given.map((one) => one(x)))
    }
  }
}
