export { type Answer, answerCode } from "./answer-code.ts";
export { type AnswerOptions, type CheckedAnswer, checkAnswer } from "./check-answer.ts";
export { DISPLAY, displayBundle } from "./display.ts";
export { HOST, installHost, type NotebookHost } from "./host.ts";
export { inspectValue } from "./inspect-value.ts";
export { readText } from "./read-text.ts";
export { readTextIfThere } from "./read-text-if-there.ts";
export { saveJson, saveText } from "./save.ts";
export { announce, show, showMarkdown } from "./show.ts";
