// @ts-check
/** What every floor page carries: the head, the slate's count, the connection as last learnt, words brought from the page before. */
import { handinStatus, onHandin } from "../slate/handin.js";
import { counts, onChange, prepare } from "../slate/queue.js";
import { formatNumber } from "../ui/format.js";
import { toast } from "../ui/toast.js";
import { offerTakeBack } from "./takebackbar.js";
import { t } from "../words/t.js";

const SAID = "said";
/** Why nothing goes to the book. @returns {Record<string, string>} */
export const AWAY = () => ({ no_signal: t("floor-frame-no_signal"), foreign: t("floor-frame-not_the_book"), signed_out: t("floor-not_let_in") });

/** Whether the screen has room for two panes: people and vessels beside the work. */
export const isWide = () => matchMedia("(min-width: 1080px)").matches;

/** @param {{mark?: string, first?: string, second?: string, back?: string}} head what is left out stays as it is */
export function setHead({ mark, first, second, back }) {
  const title = document.querySelector(".head__mark");
  const about = document.querySelector(".head__about");
  if (mark !== undefined && title) {
    title.textContent = mark;
    document.title = `${mark} · Cellarslate`;
  }
  if (first !== undefined && about) {
    about.replaceChildren(...[first, second].filter(Boolean).map((words) => {
      const line = document.createElement("span");
      line.textContent = words ?? "";
      return line;
    }));
  }
  if (back) document.querySelector(".head__back")?.setAttribute("href", back);
}

/** What the next page says; of an entry that was logged, with the way back. @param {{words: string, about?: string, entry?: string}} said */
export const sayThere = (said) => sessionStorage.setItem(SAID, JSON.stringify(said));

export function startFrame() {
  const said = sessionStorage.getItem(SAID);
  sessionStorage.removeItem(SAID);
  if (said) sayNow(said);
  const show = () => void showCounts();
  onChange(show);
  prepare().catch(() => {}); // it says so when something is logged
  onHandin(show);
  show();
}

/** @param {string} text as kept by the page before */
function sayNow(text) {
  const said = text.startsWith("{") ? JSON.parse(text) : { words: text }; // an older version kept the words alone
  if (said.entry) offerTakeBack(said);
  else toast(said.words);
}

async function showCounts() {
  const count = await counts().catch(() => null);
  if (!count) return;
  const attention = count.refused + count.clash;
  for (const place of document.querySelectorAll("[data-slate-count]")) place.textContent = count.waiting ? formatNumber(count.waiting) : "";
  for (const pill of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll(".head .pill[href='/slate']"))) {
    const words = attention ? t("floor-frame-to_look_at", { attention }) : count.waiting ? t("floor-frame-on_slate", { waiting: count.waiting }) : AWAY()[handinStatus().standing] ?? "";
    pill.textContent = words;
    pill.hidden = !words;
    pill.classList.toggle("pill--quiet", !attention && !count.waiting);
  }
}
