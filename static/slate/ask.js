// @ts-check
/** One question to the book. Only the book's own JSON, with its marker, counts as an answer. */
import { t } from "../words/t.js";

export const WAIT_MS = 8000;
const GZIP_FROM_BYTES = 1024;

/**
 * No answer of the book. `reason`: `network`, `timeout`, `foreign` (somebody else answered: a sign-in page of the
 * network), or `refused` (the book itself, with `status` and its own sentence).
 */
export class NoAnswer extends Error {
  /**
   * @param {"network" | "timeout" | "foreign" | "refused"} reason @param {string} message
   * @param {{status?: number, retryAfterS?: number}} [more]
   */
  constructor(reason, message, { status = 0, retryAfterS = 0 } = {}) {
    super(message);
    this.name = "NoAnswer";
    this.reason = reason;
    this.status = status;
    this.retryAfterS = retryAfterS;
  }
}

/**
 * @param {string} path below the site's root @param {{body?: any, waitMs?: number}} [options] with a body it is a POST
 * @returns {Promise<any>} the answer, which carries the marker and `ok`
 * @throws {NoAnswer}
 */
export async function ask(path, { body, waitMs = WAIT_MS } = {}) {
  const stop = new AbortController();
  // The time-out covers the body as well: a network that swallows packets may do so in the middle.
  const timer = setTimeout(() => stop.abort(), waitMs);
  try {
    /** @type {RequestInit} */
    const request = { signal: stop.signal, redirect: "error", cache: "no-store", credentials: "same-origin" };
    if (body !== undefined) Object.assign(request, await asPost(body));
    const response = await fetch(path, request);
    return readAnswer(response, await response.text());
  } catch (error) {
    if (error instanceof NoAnswer) throw error;
    if (stop.signal.aborted) throw new NoAnswer("timeout", t("floor-ask-the_book_did_not"));
    throw new NoAnswer("network", t("floor-ask-the_book_cannot_be"));
  } finally {
    clearTimeout(timer);
  }
}

/** @param {Response} response @param {string} text */
export function readAnswer(response, text) {
  let answer = null;
  try {
    answer = JSON.parse(text);
  } catch {
    // not ours
  }
  if (answer?.marker !== "cellarslate") {
    const words = t("floor-ask-something_else_answered_not");
    // A book behind a gate that is down answers for nobody; that is no foreign page.
    throw response.status >= 500
      ? new NoAnswer("network", t("floor-ask-the_book_cannot_be"), { status: response.status })
      : new NoAnswer("foreign", words, { status: response.status });
  }
  if (response.ok && answer.ok === true) return answer;
  const retryAfterS = Number(response.headers.get("Retry-After")) || 0;
  throw new NoAnswer("refused", String(answer.error ?? ""), { status: response.status, retryAfterS });
}

/** @param {any} body @returns {Promise<RequestInit>} */
async function asPost(body) {
  const text = JSON.stringify(body);
  /** @type {Record<string, string>} */
  const headers = { "Content-Type": "application/json" };
  if (text.length < GZIP_FROM_BYTES || !("CompressionStream" in globalThis)) return { method: "POST", headers, body: text };
  headers["Content-Encoding"] = "gzip";
  const packed = new Blob([text]).stream().pipeThrough(new CompressionStream("gzip"));
  return { method: "POST", headers, body: await new Response(packed).blob() };
}
