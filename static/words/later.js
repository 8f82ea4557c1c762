// @ts-check
/** The words of what is fetched after the first install: a module that takes them from here waits until they are on the phone. */
import { loadWords } from "../kinds/kinds.js";
import { loadLater } from "./catalogue.js";

await loadWords();
await loadLater();

export { t } from "./t.js";
