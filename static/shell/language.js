// @ts-check
/** The language of this phone: its own setting, which follows whoever takes the phone; another one from the next page on. */
import { language } from "../kinds/kinds.js";
import { askLanguage } from "../slate/worker.js";

/** What the server reads too (webapp/access/guard.py): a page that no worker answers is in the phone's language as well. */
const COOKIE = "cellarslate_language";
const KEPT_S = 400 * 24 * 3600; // the most that browsers keep

/** From the next page on the phone speaks it; false where it is not on the phone and there is no signal. @param {string} code @returns {Promise<boolean>} */
export async function speak(code) {
  if (!(await askLanguage(code))) return false;
  const isSafe = location.protocol === "https:" ? "; Secure" : "";
  document.cookie = `${COOKIE}=${code}; Path=/; Max-Age=${KEPT_S}; SameSite=Lax${isSafe}`;
  return true;
}

/** Speak as a person wishes, who has taken the phone; whoever wishes nothing leaves it as it is. @param {{language?: string} | undefined} person */
export async function followPerson(person) {
  if (person?.language && person.language !== language()) await speak(person.language);
}
