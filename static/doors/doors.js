// @ts-check
/** The front of the demo: where the screen has room, a phone opens in a window of its own, and this page stays beside it. */
const WINDOW = "cellarslate-demo-phone";
const WIDE = "(min-width: 700px) and (pointer: fine)";

for (const form of /** @type {NodeListOf<HTMLFormElement>} */ (document.querySelectorAll("form[data-phone]"))) {
  form.addEventListener("submit", () => {
    // Opened by name first, so that it has a phone's size; where that is forbidden the form opens a tab, or this page.
    if (!matchMedia(WIDE).matches) return;
    form.target = WINDOW;
    window.open("", WINDOW, "popup,width=390,height=844");
    if (form.action.endsWith("/reading")) setTimeout(() => location.reload(), 4000); // it says then that the signal is cut
  });
}
// Seen again, after the phone: is the signal still cut?
addEventListener("pageshow", (event) => event.persisted && location.reload());
