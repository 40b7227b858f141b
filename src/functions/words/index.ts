export { cutWords } from "./cuts";
export { wordingOf } from "./findings";
export { hardwareRow } from "./hardware";
export { heightsFrom } from "./heights";
export { message } from "./messages";
export { edgesWords, pieceLabel } from "./pieces";
export { quoteRows } from "./quote";
export { setUpRows } from "./set-ups";
export { verdictWords } from "./verdict";
