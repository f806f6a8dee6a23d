export { drawOutcome, outcomeText } from './outcomeDocument.ts'
export { outcomeSentence, printedIn } from './outcomeWords.ts'
export { type DerivedQuantity, type PropagatedModel, propagateModel } from './propagateModel.ts'
