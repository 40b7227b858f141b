export { cutCaution, wordingOf } from "./findings";
export { hardwareRow } from "./hardware";
export { message } from "./messages";
export { edgesWords, pieceLabel } from "./pieces";
export { quoteRows } from "./quote";
export { setUpRows } from "./set-ups";
export { verdictWords } from "./verdict";
