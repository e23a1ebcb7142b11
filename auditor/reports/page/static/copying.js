"use strict";

/* A text with a button that copies it. Where the browser gives no clipboard the text is selected, ready for the keys. */
function copyable(text, { label, rows }) {
  const field = el("textarea", { readonly: true, rows, "aria-label": label });
  field.value = text;
  const told = el("span", { role: "status", class: "soft" });
  const button = el("button", { type: "button" }, "Copy");
  button.addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(field.value);
      told.textContent = "Copied.";
    } catch {
      field.select();
      told.textContent = document.execCommand("copy") ? "Copied." : "Selected: copy it with your keyboard.";
    }
  });
  return el("div", { class: "copyable" }, field, el("p", { class: "actions" }, button, " ", told));
}
