// @ts-check
// A classic script, so that a stored theme and the keys for gloves stand before the first paint. theme.js does the rest.
try {
  const theme = localStorage.getItem("theme");
  if (theme === "dark" || theme === "light") document.documentElement.dataset.theme = theme;
  document.documentElement.toggleAttribute("data-gloves", localStorage.getItem("help:gloves") === "on");
} catch {
  // Storage barred: the system's theme serves.
}
