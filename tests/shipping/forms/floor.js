// @ts-nocheck
/** The way in: the page's own module comes later, as on the floor. */
import { said } from "./said.js";

const page = await import("./page.js"); // top-level await, and a module imported later that is joined
said.page = page.start();
const job = await import("./job.js"); // imported later, and not joined
await job.start();
const again = await import("./shared.js");
said["one and the same by either way"] = again.box === page.box && job.box === page.box;
globalThis.found = said;
