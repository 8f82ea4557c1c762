// @ts-check
/** A tank of spirit as it stands now: as the book had it, with what this phone has logged since. Masses add; volumes do not. */
import { kindNamed } from "../../kinds/kinds.js";
import { readEntry } from "../../kinds/read.js";
import { unknownToCards } from "../../slate/cards.js";
import { litresFromMass, massFromLitres } from "../../trade/alcoholometry.js";
import { massFractionFromStrength, strengthFromMassFraction } from "../../trade/density.js";

/**
 * @typedef {object} Tank
 * @property {number} massKg
 * @property {number} strengthPct true, % vol at 20 °C
 * @property {number} volumeL at 20 °C
 * @property {number} waiting entries of this phone that are reckoned in
 */

/** @param {any} card @returns {Promise<Tank|null>} null where no spirit is known in it */
export async function tankNow(card) {
  const kept = await unknownToCards();
  const own = kept.map((one) => ("entry" in one ? one.entry : one)).sort((a, b) => Date.parse(a.read_at) - Date.parse(b.read_at) || a.seq - b.seq);
  return withEntries(card, own);
}

/** @param {any} card @param {any[]} entries not in the book yet, in their order @returns {Tank|null} */
export function withEntries(card, entries) {
  const replaced = new Set(entries.map((entry) => entry.amends).filter(Boolean));
  const held = card.holds && !card.holds.mash ? card.holds : null;
  let massKg = held?.mass_kg ?? 0;
  let ethanolKg = massKg * (massKg ? massFractionFromStrength(Math.min(held.strength_pct ?? 0, 100)) : 0);
  let waiting = 0;
  for (const entry of entries) {
    const kind = kindNamed(entry.kind);
    if (!kind || replaced.has(entry.id) || entry.amends) continue;
    const isHere = entry.mark === card.mark;
    if (!isHere && entry.values.to_vessel?.raw !== card.mark) continue;
    const { figures } = readEntry(kind, entry, card.context ?? {});
    const spirit = netOf(entry, figures);
    if (kind.name === "reduce" && isHere && figures.water_mass != null) massKg += figures.water_mass;
    else if (kind.name === "dump" && !isHere && spirit) [massKg, ethanolKg] = [massKg + spirit.kg, ethanolKg + spirit.ethanolKg];
    else if ((kind.name === "gauge" || kind.name === "bottling_gauge") && isHere && spirit) [massKg, ethanolKg] = [spirit.kg, spirit.ethanolKg];
    else continue;
    waiting += 1;
  }
  if (!(massKg > 0.001 && ethanolKg > 0)) return null;
  const strengthPct = strengthFromMassFraction(Math.min(ethanolKg / massKg, 1));
  return { massKg, strengthPct, volumeL: litresFromMass(massKg, strengthPct), waiting };
}

/** @param {any} entry @param {any} figures @returns {{kg: number, ethanolKg: number}|null} */
function netOf(entry, figures) {
  const strength = figures.true_strength;
  if (strength == null) return null;
  const kg = figures.net ?? (figures.volume_20 != null ? massFromLitres(figures.volume_20, strength) : null);
  return kg == null ? null : { kg, ethanolKg: kg * massFractionFromStrength(strength) };
}

/** The card with the tank as it stands, so that forms reckon with it. @param {any} card @param {Tank|null} tank */
export const cardWith = (card, tank) => (tank
  ? { ...card, context: { ...card.context, mass_kg: tank.massKg, strength_pct: tank.strengthPct, volume_l: tank.volumeL, lpa_l: (tank.volumeL * tank.strengthPct) / 100 } }
  : card);
