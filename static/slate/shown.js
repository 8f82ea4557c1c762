// @ts-check
/** Whether whoever holds the phone has shown by their PIN that it is they. */

/** @typedef {{code: string, name: string, role: string, roles: string[], shown?: "pin" | "" | "unseen"}} Who `shown`: by their PIN; they have none; it could not be looked at. An earlier version left it out, and asked for the PIN */

/** Whether a person has a PIN to type. @param {any} person as the cards brought them */
export const hasPin = (person) => Boolean(person?.has_pin ?? person?.pin);

/** What an entry says of whoever holds the phone: whether their PIN was typed. @param {Who} who @returns {"pin" | ""} */
export const shownBy = (who) => ((who.shown ?? "pin") === "pin" ? "pin" : "");

/** Whether somebody must take the phone up anew: they have got a PIN, or another, since. @param {Who} who @param {any} person */
export const isStale = (who, person) => hasPin(person) && (who.shown === "" || (shownBy(who) === "pin" && !person.pin));
