"use strict";

const CHUNK = 100;
const STANDING_ORDER = ["contradicted", "unproven", "supported", "unclaimed"];
const SEVERITY_ORDER = ["grave", "weighty", "note", ""];

/* Columns: name, cell sorted by, key to sort by. The first key is the order at the start: the worst first. */
const COLUMNS = [
  { name: "Listing", key: (row) => row[TITLE].toLocaleLowerCase() },
  { name: "Standing", key: (row) => STANDING_ORDER.indexOf(row[STANDING]) },
  { name: "Gravest finding", key: (row) => SEVERITY_ORDER.indexOf(row[SEVERITY]) },
  { name: "Asked", key: (row) => row[AMOUNT], group: (row) => row[CURRENCY] },
  { name: "Work", key: (row) => row[WORK].toLocaleLowerCase() },
  { name: "Seller", key: (row) => row[SELLER].toLocaleLowerCase() },
];

/* The table: rows are made a hundred at a time, a listing's inside only when it is opened. */
function listingsTable(table, more, rows, open) {
  const body = el("tbody", { role: "rowgroup" });
  const heads = COLUMNS.map((column, number) => {
    const button = el("button", { type: "button" }, column.name);
    button.addEventListener("click", () => sortBy(number, sorted.column === number && !sorted.back));
    return el("th", { role: "columnheader", scope: "col", class: `cell-${number}` }, button);
  });
  table.append(el("thead", { role: "rowgroup" }, el("tr", { role: "row" }, heads)), body);

  const sorted = { column: 2, back: false };
  const opened = new Map();
  let order = [];
  let shown = 0;

  function sortBy(column, back) {
    Object.assign(sorted, { column, back });
    arrange(order);
    table.dispatchEvent(new Event("sorted"));
  }

  function compare(a, b) {
    const { key, group } = COLUMNS[sorted.column];
    const [x, y] = [key(rows[a]), key(rows[b])];
    const empty = (value) => value === null || value === "";
    if (empty(x) !== empty(y)) return empty(x) ? 1 : -1; // what isn't told stands last, whichever way
    const way = sorted.back ? -1 : 1;
    const [g, h] = group ? [group(rows[a]), group(rows[b])] : ["", ""];
    if (g !== h) return g < h ? -1 : 1;
    return x < y ? -way : x > y ? way : a - b;
  }

  function arrange(numbers) {
    order = [...numbers].sort(compare);
    heads.forEach((head, number) => {
      if (number === sorted.column) head.setAttribute("aria-sort", sorted.back ? "descending" : "ascending");
      else head.removeAttribute("aria-sort");
    });
    body.replaceChildren();
    shown = 0;
    showMore();
  }

  function showMore() {
    body.append(...order.slice(shown, shown + CHUNK).flatMap((number) => (opened.has(number) ? [line(number), opened.get(number)] : [line(number)])));
    shown = Math.min(shown + CHUNK, order.length);
    more.hidden = shown === order.length;
    more.textContent = `Show more (${(order.length - shown).toLocaleString("en")} left)`;
  }

  function line(number) {
    const row = rows[number];
    const button = el("button", { type: "button", class: "opener", "aria-expanded": String(opened.has(number)) }, el("bdi", {}, row[TITLE] || row[ID]));
    button.addEventListener("click", () => toggle(number, button));
    const price = row[AMOUNT] === null ? "" : [row[AMOUNT].toLocaleString("en", { minimumFractionDigits: row[AMOUNT] % 1 ? 2 : 0 }), row[CURRENCY]].join(" ");
    const severity = row[SEVERITY] ? el("span", { class: `severity ${row[SEVERITY]}` }, row[SEVERITY]) : "";
    const cells = [
      [button, el("span", { class: "sub" }, el("bdi", {}, row[ID]))],
      [sign(row[STANDING]), " ", row[STANDING]],
      row[GRAVEST] ? [severity, " ", row[GRAVEST]] : ["none"],
      [price.trim()],
      [row[WORK]],
      [el("bdi", {}, row[SELLER])],
    ];
    return el("tr", { role: "row", "data-number": number }, cells.map((children, cell) => el("td", { role: "cell", class: `cell-${cell}` }, children)));
  }

  function toggle(number, button) {
    const was = opened.get(number);
    if (was) {
      was.remove();
      opened.delete(number);
    } else {
      const inside = el("tr", { role: "row", class: "inside", id: `inside-${number}` }, el("td", { role: "cell", colspan: COLUMNS.length }, open(number)));
      opened.set(number, inside);
      button.closest("tr").after(inside);
    }
    button.setAttribute("aria-expanded", String(!was));
  }

  more.addEventListener("click", showMore);
  new IntersectionObserver(([seen]) => seen.isIntersecting && !more.hidden && showMore(), { rootMargin: "600px" }).observe(more);
  return { arrange, sortBy, sorted, count: () => order.length };
}
