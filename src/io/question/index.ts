export { readAnswers } from './readAnswers.ts'
export { type QuestionFile, readQuestion } from './readQuestion.ts'
