// Shows a theme at once and keeps it for a year in a cookie, which the server reads before it draws the next page.
export function show(cookie, theme) {
  document.documentElement.dataset.theme = theme;
  document.cookie = `${cookie}=${theme}; path=/; max-age=31536000; samesite=strict`;
}
