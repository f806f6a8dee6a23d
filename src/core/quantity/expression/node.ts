/** Two-sided operations of a formula. */
export type Operation = '+' | '-' | '*' | '/' | '^'

/** A parsed formula as a tree. `name` holds the place of the quantity in the list that the formula was parsed with. */
export type ExpressionNode =
  | { readonly is: 'number'; readonly value: number }
  | { readonly is: 'name'; readonly index: number; readonly name: string }
  | { readonly is: 'negative'; readonly of: ExpressionNode }
  | {
      readonly is: 'operation'
      readonly operation: Operation
      readonly left: ExpressionNode
      readonly right: ExpressionNode
    }
  | { readonly is: 'call'; readonly called: string; readonly given: readonly ExpressionNode[] }

/** Where a formula goes wrong: the letter it begins at, from 1, what is wrong and what would mend it. */
export interface ExpressionFault {
  readonly at: number
  readonly what: string
  readonly mend: string
}
