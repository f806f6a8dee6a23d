export { answeredSheet, readAnsweredSheet } from './answeredSheet.ts'
export { readAnswers } from './readAnswers.ts'
export { type QuestionFile, readQuestion } from './readQuestion.ts'
