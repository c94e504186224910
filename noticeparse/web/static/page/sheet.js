// The tab of a work sheet: takes the document from the page that opened it, and shows it. Its styles
// become sheets of this page, since the security policy allows none within a document.

function show(words) {
  const given = new DOMParser().parseFromString(words, "text/html");
  const styles = [...given.querySelectorAll("style")].map((style) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(style.textContent);
    return sheet;
  });
  given.querySelectorAll("style, script, link").forEach((one) => one.remove());
  document.adoptedStyleSheets = styles;
  document.title = given.title;
  document.documentElement.lang = given.documentElement.lang;
  document.getElementById("sheet").replaceChildren(...document.importNode(given.body, true).childNodes);
  document.getElementById("print").hidden = false;
}

addEventListener("message", (event) => {
  if (event.source !== opener || event.origin !== location.origin) return;
  if (event.data.ready) opener.postMessage({ ready: true }, location.origin);
  if (event.data.sheet) show(event.data.sheet);
});
document.getElementById("print").addEventListener("click", () => print());
opener?.postMessage({ ready: true }, location.origin);
