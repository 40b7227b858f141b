export { bookText, shopPagesOf } from "./book-text";
