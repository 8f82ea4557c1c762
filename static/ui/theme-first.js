// @ts-check
// A classic script, so that a stored theme and the keys for gloves stand before the first paint. theme.js does the rest.
try {
  const theme = localStorage.getItem("theme");
  if (theme === "dark" || theme === "light") document.documentElement.dataset.theme = theme;
  if (localStorage.getItem("help:gloves") === "on") {
    document.documentElement.dataset.gloves = "";
    const sizes = Object.assign(document.createElement("link"), { rel: "stylesheet", href: "/static/jobs/helps/gloves.css" });
    sizes.setAttribute("blocking", "render");
    document.head.append(sizes);
  }
} catch {
  // Storage barred: the system's theme serves.
}
