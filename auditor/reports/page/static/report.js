"use strict";

/* The report's start: table and filters over the rows, the tiles above them as filters, details opened for printing. */
(() => {
  const rows = island("rows-data");
  const points = island("points-data");
  const form = document.getElementById("filters");
  const told = document.getElementById("shown");

  const table = listingsTable(document.getElementById("rows"), document.getElementById("more"), rows, (number) => {
    const data = island(`listing-${number}`);
    return listingView(data, points[data.set]);
  });
  const filter = filters(form, rows, refresh);

  const order = el("select", {}, COLUMNS.flatMap(({ name }, number) => [["", number], [", reversed", number]].map(([tail, value], back) => el("option", { value: `${value} ${back}` }, `${name.toLowerCase()}${tail}`))));
  form.append(el("label", { class: "filter filter-order" }, el("span", {}, "Sorted by"), order));
  order.addEventListener("input", (event) => {
    event.stopPropagation();
    const [column, back] = order.value.split(" ").map(Number);
    table.sortBy(column, Boolean(back));
  });
  document.getElementById("rows").addEventListener("sorted", settle);

  const tiles = [...document.querySelectorAll("[data-filter]")];
  tiles.forEach((tile) =>
    tile.addEventListener("click", () => {
      const { filter: name, value } = tile.dataset;
      const field = filter.fields[name];
      filter.set(name, field && field.value === value ? "" : value);
    }),
  );

  function settle() {
    order.value = `${table.sorted.column} ${Number(table.sorted.back)}`;
    tiles.forEach((tile) => {
      const field = filter.fields[tile.dataset.filter];
      tile.setAttribute("aria-pressed", String(Boolean(field) && field.value === tile.dataset.value));
    });
    const count = table.count();
    told.textContent = count === rows.length ? `All ${count.toLocaleString("en")} listings.` : `${count.toLocaleString("en")} of ${rows.length.toLocaleString("en")} listings.`;
  }

  function refresh() {
    table.arrange(filter.passing());
    settle();
  }

  let folded = [];
  addEventListener("beforeprint", () => {
    folded = [...document.querySelectorAll(".listing details:not([open])")];
    folded.forEach((each) => (each.open = true));
  });
  addEventListener("afterprint", () => folded.forEach((each) => (each.open = false)));
  refresh();
})();
