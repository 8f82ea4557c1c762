// @ts-check
// A classic script, so that a stored theme stands before the first paint. theme.js does the rest.
try {
  const theme = localStorage.getItem("theme");
  if (theme === "dark" || theme === "light") document.documentElement.dataset.theme = theme;
} catch {
  // Storage barred: the system's theme serves.
}
