"use strict";

/* The draft page: a reading after each pause in typing; only the newest answer is shown. */
(() => {
  const PAUSE = 120; // milliseconds without a key
  const form = document.getElementById("draft");
  const field = document.getElementById("text");
  const marks = mirror(field, document.getElementById("mirror"));
  const state = document.getElementById("state");
  const view = document.getElementById("view");
  const viewPart = document.getElementById("view-part");
  let waiting = 0;
  let newest = 0;

  function soon() {
    marks.typed();
    clearTimeout(waiting);
    waiting = setTimeout(ask, PAUSE);
  }

  async function ask() {
    const number = ++newest;
    const draft = Object.fromEntries(new FormData(form));
    draft.text = field.value; // as it stands there: a form's data would have other line ends
    try {
      const answer = await fetch("/draft", { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(draft) });
      if (!answer.ok) throw new Error(answer.status === 413 ? "The draft is too long." : `The desk could not read it (${answer.status}).`);
      const told = await answer.json();
      if (number === newest) show(told, draft);
    } catch (error) {
      if (number === newest) state.textContent = error instanceof TypeError ? "The desk doesn't answer: was it closed?" : error.message;
    }
  }

  function show(told, draft) {
    marks.show(told.detail.text);
    document.getElementById("legend").replaceChildren(legend([...(told.detail.title || []), ...told.detail.text]) || "");
    document.getElementById("price-told").textContent = told.price;
    document.getElementById("facts").replaceChildren(
      told.facts ? copyable(told.facts, { label: "The facts line", rows: Math.ceil(told.facts.length / 60) + 1 }) : el("p", { class: "soft" }, "Made from what you claim, in the trade's order."),
    );
    const empty = !draft.text.trim() && !draft.title.trim();
    state.textContent = empty ? "Nothing is written yet." : status(told);
    document.getElementById("advice").replaceChildren(...(empty ? [] : advice(told)));
    viewPart.hidden = empty;
    view.replaceChildren(empty ? "" : listingView(told.detail, told.points));
  }

  function status({ detail, missed, avoid, disagree, grades }) {
    const count = detail.claims.length;
    const open = missed.length + avoid.length + disagree.length + grades.length;
    const book = detail.work ? ` of ${detail.doubtful ? "perhaps " : ""}${detail.work}` : ", no point set known for it";
    return `${count} claim${count === 1 ? "" : "s"} read${book}. ${open ? `${open} thing${open === 1 ? "" : "s"} to look at.` : "Nothing to look at."}`;
  }

  function advice(told) {
    const list = (items) => el("ul", {}, items.map((item) => el("li", {}, item)));
    const part = (head, items) => (items.length ? [el("h3", {}, head), list(items)] : []);
    return [
      ...part("What doesn't agree", told.disagree),
      ...part("Grade against faults", told.grades),
      ...part("What a buyer would miss", told.missed),
      ...part("What would show it", told.shown),
      ...part("Words to avoid", told.avoid.map(([word, why]) => [el("strong", {}, word), `: ${why}`])),
    ];
  }

  form.addEventListener("input", soon);
  form.addEventListener("submit", (event) => event.preventDefault());
  addEventListener("resize", () => marks.typed());
  if (field.value || form.title.value) soon();
})();
