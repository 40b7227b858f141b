import "./page.css";
import { startPage } from "./page";

void startPage();
