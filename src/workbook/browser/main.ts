import "./styles";
import { takeFirstWork } from "./first-work";

const first = takeFirstWork();
// The grid's library is large: while it is read, what is kept is fetched and a worker has begun with it.
void import("./libraries");
void import("./page").then(({ startPage }) => startPage(first));
