// @ts-check
/**
 * Passkeys: the browser is asked, and its answer goes with the form. What is asked and whether the answer is good is the
 * server's. Where a browser has no passkeys, or the page is no secure context, nothing of it shows.
 */

const has = window.isSecureContext && "PublicKeyCredential" in window;

/** @param {string} text base64url @returns {Uint8Array<ArrayBuffer>} */
const toBytes = (text) => Uint8Array.from(atob(text.replaceAll("-", "+").replaceAll("_", "/")), (one) => one.charCodeAt(0));

/** @param {ArrayBuffer | null} buffer @returns {string | null} base64url */
function toText(buffer) {
  if (!buffer) return null;
  const text = btoa(String.fromCharCode(...new Uint8Array(buffer)));
  return text.replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/** @param {any[]} [list] of descriptors as JSON has them */
const withBytes = (list = []) => list.map((one) => ({ ...one, id: toBytes(one.id) }));

/** @param {PublicKeyCredential} made @param {Record<string, ArrayBuffer | null>} parts */
function asJson(made, parts) {
  const response = Object.fromEntries(Object.entries(parts).map(([name, buffer]) => [name, toText(buffer)]));
  return JSON.stringify({ id: made.id, rawId: toText(made.rawId), type: made.type, response });
}

/** Ask for a passkey that there is. @param {HTMLFormElement} form @param {string} what @returns {Promise<string>} */
async function use(form, what) {
  const body = new FormData();
  body.set("csrf_token", /** @type {HTMLInputElement} */ (form.elements.namedItem("csrf_token")).value);
  body.set("for", what);
  const answer = await fetch("/passkey/question", { method: "POST", body });
  if (!answer.ok) throw new Error(String(answer.status));
  const asked = await answer.json();
  const publicKey = { ...asked, challenge: toBytes(asked.challenge), allowCredentials: withBytes(asked.allowCredentials) };
  const got = /** @type {PublicKeyCredential} */ (await navigator.credentials.get({ publicKey })); // by its options, one of these
  const { clientDataJSON, authenticatorData, signature, userHandle } = /** @type {AuthenticatorAssertionResponse} */ (got.response);
  return asJson(got, { clientDataJSON, authenticatorData, signature, userHandle });
}

/** Have a new one made. @param {HTMLFormElement} form @returns {Promise<string>} */
async function make(form) {
  const asked = JSON.parse(form.dataset.options ?? "{}");
  const publicKey = {
    ...asked,
    challenge: toBytes(asked.challenge),
    user: { ...asked.user, id: toBytes(asked.user.id) },
    excludeCredentials: withBytes(asked.excludeCredentials),
  };
  const made = /** @type {PublicKeyCredential} */ (await navigator.credentials.create({ publicKey })); // by its options, one of these
  const { clientDataJSON, attestationObject } = /** @type {AuthenticatorAttestationResponse} */ (made.response);
  return asJson(made, { clientDataJSON, attestationObject });
}

/** @param {HTMLFormElement} form */
function setUp(form) {
  const what = form.dataset.passkey;
  const says = /** @type {HTMLElement} */ (form.querySelector("[data-part=says]"));

  async function go() {
    says.textContent = "";
    try {
      const answer = await (what === "make" ? make(form) : use(form, what === "again" ? "again" : "sign-in"));
      let field = form.elements.namedItem(what === "again" ? "again_passkey" : "passkey");
      if (!(field instanceof HTMLInputElement)) {
        field = Object.assign(document.createElement("input"), { type: "hidden", name: "again_passkey" });
        form.append(field);
      }
      /** @type {HTMLInputElement} */ (field).value = answer;
      // Past the check of boxes, since a password box may be empty; a box may be called "submit".
      HTMLFormElement.prototype.submit.call(form);
    } catch {
      says.textContent = says.dataset.failed ?? "";
    }
  }

  if (what === "again") {
    const button = /** @type {HTMLButtonElement} */ (form.querySelector("[data-part=by-passkey]"));
    button.hidden = false;
    button.addEventListener("click", () => void go());
    return;
  }
  form.hidden = false;
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void go();
  });
}

if (has) {
  for (const part of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll("[data-part=none]"))) part.hidden = true;
  for (const form of /** @type {NodeListOf<HTMLFormElement>} */ (document.querySelectorAll("form[data-passkey]"))) setUp(form);
}
