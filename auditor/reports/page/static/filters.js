"use strict";

/* The row's cells by name; the writer's _row has the same order. */
const ID = 0, TITLE = 1, WORK = 2, STANDING = 3, SEVERITY = 4, GRAVEST = 5, AMOUNT = 6, CURRENCY = 7, SELLER = 8, KINDS = 9;

/* The filters' form and what passes them. changed() is called when any filter changes. */
function filters(form, rows, changed) {
  const values = (cell) => [...new Set(rows.flatMap((row) => row[cell]).filter(Boolean))].sort((a, b) => a.localeCompare(b));
  const fields = {};
  const add = (name, label, field) => {
    field.name = name;
    fields[name] = field;
    form.append(el("label", { class: `filter filter-${name}` }, el("span", {}, label), field));
  };
  const choice = (name, label, options) => {
    if (options.length) add(name, label, el("select", {}, el("option", { value: "" }, "any"), options.map((value) => el("option", {}, value))));
  };
  add("words", "Words", el("input", { type: "search", placeholder: "title, seller, id" }));
  choice("standing", "Standing", values(STANDING));
  choice("kind", "Finding", values(KINDS));
  choice("work", "Work", values(WORK));
  const sellers = values(SELLER);
  if (sellers.length > 1) {
    form.append(el("datalist", { id: "sellers" }, sellers.map((value) => el("option", { value }))));
    add("seller", "Seller", el("input", { list: "sellers" }));
  }
  if (rows.some((row) => row[AMOUNT] !== null)) {
    add("least", "Price from", el("input", { type: "number", min: 0, step: "any", inputmode: "decimal" }));
    add("most", "to", el("input", { type: "number", min: 0, step: "any", inputmode: "decimal" }));
    choice("currency", "Currency", values(CURRENCY));
  }
  const reset = el("button", { type: "reset", class: "quiet" }, "Show all");
  form.append(reset);

  const folded = rows.map((row) => [row[ID], row[TITLE], row[WORK], row[SELLER]].join("\n").toLocaleLowerCase());
  const read = (name) => (fields[name] ? fields[name].value.trim() : "");
  let waiting = 0;
  form.addEventListener("input", () => {
    cancelAnimationFrame(waiting);
    waiting = requestAnimationFrame(changed);
  });
  form.addEventListener("reset", () => setTimeout(changed));
  form.addEventListener("submit", (event) => event.preventDefault());

  return {
    fields,
    set(name, value) {
      if (fields[name]) fields[name].value = value;
      changed();
    },
    /* The numbers of the rows that pass every filter. */
    passing() {
      const words = read("words").toLocaleLowerCase().split(/\s+/).filter(Boolean);
      const [standing, kind, work, currency] = ["standing", "kind", "work", "currency"].map(read);
      const seller = read("seller").toLocaleLowerCase();
      const [least, most] = ["least", "most"].map((name) => (read(name) === "" ? null : Number(read(name))));
      const passes = (row, number) =>
        words.every((word) => folded[number].includes(word)) &&
        (!standing || row[STANDING] === standing) &&
        (!kind || row[KINDS].includes(kind)) &&
        (!work || row[WORK] === work) &&
        (!seller || row[SELLER].toLocaleLowerCase().includes(seller)) &&
        (!currency || row[CURRENCY] === currency) &&
        (least === null || (row[AMOUNT] !== null && row[AMOUNT] >= least)) &&
        (most === null || (row[AMOUNT] !== null && row[AMOUNT] <= most));
      return rows.map((_, number) => number).filter((number) => passes(rows[number], number));
    },
  };
}
