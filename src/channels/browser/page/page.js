// Shows what the server sends and posts what people do; nothing is decided here.

const $ = (id) => document.getElementById(id);

/** What this page looks at; all else comes with each view. */
const nothing = { homeowner: undefined, coming: undefined, staff: undefined, topic: null };
const looking = { ...nothing };
let view;

const events = new EventSource("/events");
events.onmessage = ({ data }) => {
  const before = view;
  view = JSON.parse(data);
  show(before);
};
events.onerror = () => {
  $("state").textContent =
    "The desk has stopped. Start it again with “npm start”; this page comes back by itself.";
};

async function post(act) {
  try {
    const response = await fetch("/acts", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(act),
    });
    const { said = "", problem = "", person } = await response.json();
    return { done: response.ok, word: response.ok ? said : `Not done: ${problem}`, person };
  } catch {
    return { done: false, word: "Not done: the desk does not answer." };
  }
}

/** Posts an act and tells beside it what became of it; gives the answer, or undefined when it was refused. */
async function act(asked, place) {
  place.textContent = "";
  const answer = await post(asked);
  place.textContent = answer.word;
  return answer.done ? answer : undefined;
}

const asHomeowner = () => ({ side: "home", person: looking.homeowner });
const asStaff = () => ({ side: "desk", person: looking.staff, topic: looking.topic });

// What is seen

function show(before) {
  const { homeowners, staff, clock, cases, notices, shop } = view;
  // Somebody who has just come may not be in this view yet; of somebody from before all was forgotten nothing is left.
  const isThere = homeowners.some(({ id }) => id === looking.homeowner);
  const comes = looking.coming !== undefined && looking.homeowner === looking.coming;
  if (!isThere && !comes) looking.homeowner = homeowners[0].id;
  looking.staff ??= staff[0].id;
  $("state").textContent = "";
  $("shop").textContent = shop;
  showClock(clock);
  showOptions($("homeowner"), homeowners, looking.homeowner);
  showOptions($("staff"), staff, looking.staff);

  const person = homeowners.find(({ id }) => id === looking.homeowner) ?? homeowners[0];
  $("home-name").textContent = person.name;
  showEntries($("home-log"), person.entries, person.id, (entry, node) => {
    if (entry.by === "person" && entry.text !== "" && entry.text !== "/start")
      node.append(changeButton(entry));
  });

  const open = cases.find(({ topic }) => topic === looking.topic);
  showCards(cases, notices);
  $("open-title").textContent = open ? `Case ${open.number}: ${open.headline}` : "Notices";
  $("desk-label").textContent = open
    ? `Write on the card of case ${open.number}`
    : "Ask the desk, as /waiting or /help";
  $("ways").hidden = open === undefined;
  showEntries($("desk-log"), open ? open.entries : notices, open ? open.topic : "notices", () => {});
  if (before) markNews(before);
}

function showClock({ time, words, desk }) {
  $("clock-words").textContent = words;
  $("clock-desk").textContent = desk;
  const [hour, minute] = time.split(":").map(Number);
  $("hour-hand").setAttribute("transform", `rotate(${hour * 30 + minute / 2})`);
  $("minute-hand").setAttribute("transform", `rotate(${minute * 6})`);
  document.body.dataset.night = String(hour < 6 || hour >= 20);
}

function showOptions(select, people, chosen) {
  if (
    select.options.length !== people.length ||
    [...select.options].some(({ value }, n) => value !== String(people[n].id))
  )
    select.replaceChildren(...people.map(({ id, name }) => new Option(name, id)));
  select.value = String(chosen);
}

const stateWords = {
  danger: "Danger",
  waiting: "Waits",
  taken: "In hand",
  "with-bot": "With the bot",
  closed: "Closed",
};

function showCards(cases, notices) {
  const last = notices.at(-1)?.text.split("\n")[0] ?? "Digest and alerts come here.";
  const cards = [
    { topic: null, number: "", headline: last, state: "notices", word: "Notices" },
    ...cases.map(({ topic, number, headline, state }) => ({
      topic,
      number,
      headline,
      state,
      word: stateWords[state],
    })),
  ];
  reconcile(
    $("cards"),
    cards,
    ({ topic }) => String(topic),
    (card) => {
      const button = make("button", { type: "button", class: "card" });
      button.append(
        make("span", { class: "tab" }, card.number === "" ? card.word : `No. ${card.number}`),
        ...(card.number === "" ? [] : [make("span", { class: "stamp" }, card.word)]),
        make("span", { class: "line" }, card.headline),
      );
      button.addEventListener("click", () => {
        looking.topic = card.topic;
        $("desk-said").textContent = "";
        show();
        // On a phone the card lies below the board.
        if (matchMedia("(width < 60rem)").matches) $("open-title").scrollIntoView();
      });
      const item = make("li", { class: card.state });
      item.append(button);
      return item;
    },
  );
  for (const item of $("cards").children)
    item.firstChild.setAttribute("aria-current", String(item.dataset.key === String(looking.topic)));
}

/** A log shows its newest entry until somebody scrolls away from it; a card begins with its brief. */
function showEntries(log, entries, of, finish) {
  if (log.dataset.of !== String(of)) {
    log.replaceChildren();
    log.dataset.of = String(of);
    log.scrollTop = 0;
    log.dataset.follow = String(of === looking.homeowner);
  }
  const finished = (entry) => {
    const node = entryNode(entry, log);
    finish(entry, node);
    return node;
  };
  reconcile(log, entries, ({ id }) => String(id), finished);
  keepUp(log);
}

function keepUp(log) {
  if (log.dataset.follow === "true") log.scrollTop = log.scrollHeight;
}

function follow(log) {
  log.dataset.follow = "true";
  keepUp(log);
}

function entryNode(entry, log) {
  const node = make("article", { class: `entry ${entry.by}${entry.picture ? " drawn" : ""}` });
  const margin = make("header", { class: "margin" });
  margin.append(
    make("b", {}, entry.from),
    make("span", {}, entry.at),
    make("span", {}, entry.edited ? "changed" : ""),
  );
  const body = make("div", { class: "body" });
  // Under a drawing of the bot stands what it shows.
  const drawn = entry.picture && entry.by === "bot" && entry.text !== "";
  if (entry.picture) {
    const alt = drawn ? entry.text : `Photo from ${entry.from}`;
    const image = make("img", { src: entry.picture, alt, width: 360 });
    image.addEventListener("load", () => keepUp(log));
    body.append(image);
  }
  const words = entry.text === "/start" ? "(opens the chat)" : entry.text;
  if (words !== "" && !drawn) body.append(textNode(words, entry.bold));
  if (entry.buttons.length > 0) body.append(buttonRow(entry, log));
  node.append(margin, body);
  return node;
}

function textNode(text, bold) {
  const words = make("p", { class: "words" });
  let at = 0;
  for (const [from, to] of bold) {
    words.append(text.slice(at, from), make("b", {}, text.slice(from, to)));
    at = to;
  }
  words.append(text.slice(at));
  return words;
}

function buttonRow(entry, log) {
  const row = make("div", { class: "row slips" });
  const atHome = log === $("home-log");
  for (const label of entry.buttons) {
    const button = make("button", { type: "button", class: "slip" }, label);
    button.addEventListener("click", async () => {
      for (const other of row.children) other.disabled = true;
      const said = $(atHome ? "home-said" : "desk-said");
      await act(
        { do: "press", as: atHome ? asHomeowner() : asStaff(), message: entry.id, button: label },
        said,
      );
      for (const other of row.children) other.disabled = false;
      // The button may be gone: whoever uses the keyboard goes on where words are written.
      if (document.activeElement === document.body) $(atHome ? "home-text" : "desk-text").focus();
    });
    row.append(button);
  }
  return row;
}

function changeButton(entry) {
  const button = make("button", { type: "button", class: "change" }, "Change");
  button.setAttribute("aria-label", `Change “${entry.text.slice(0, 60)}”`);
  button.addEventListener("click", () => change(entry, button.closest(".entry")));
  return button;
}

/** Opens a written line for changing; views that come meanwhile leave it alone. */
function change(entry, node) {
  node.dataset.kept = "yes";
  const form = make("form", { class: "changing" });
  const field = make("textarea", { rows: 2, maxlength: 4096, "aria-label": "Changed words" });
  field.value = entry.text;
  const save = make("button", { type: "submit" }, "Save the change");
  const leave = make("button", { type: "button" }, "Leave it");
  const row = make("div", { class: "row" });
  row.append(save, leave);
  form.append(field, row);
  const end = () => {
    delete node.dataset.kept;
    node.dataset.made = "";
    show();
    $("home-text").focus();
  };
  leave.addEventListener("click", end);
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    if (await act({ do: "edit", as: asHomeowner(), message: entry.id, text: field.value }, $("home-said")))
      end();
  });
  node.querySelector(".body").replaceChildren(form);
  node.querySelector(".change").remove();
  field.focus();
}

/** On a narrow screen one side is hidden: its button says when something has come there. */
function markNews(before) {
  const hidden = document.body.dataset.side === "home" ? "desk" : "home";
  const of = (seen) => JSON.stringify(hidden === "desk" ? [seen.cases, seen.notices] : seen.homeowners);
  if (of(before) !== of(view)) newsMark(hidden).hidden = false;
}
const newsMark = (side) => document.querySelector(`[data-show="${side}"] .news`);

/** Makes the children of `list` those of `items`, leaving alone what has not changed. */
function reconcile(list, items, keyOf, makeNode) {
  const known = new Map([...list.children].map((node) => [node.dataset.key, node]));
  items.forEach((item, index) => {
    const key = keyOf(item);
    const made = JSON.stringify(item);
    let node = known.get(key);
    known.delete(key);
    if (node?.dataset.made !== made && node?.dataset.kept === undefined) {
      const fresh = makeNode(item);
      fresh.dataset.key = key;
      fresh.dataset.made = made;
      const hadFocus = node?.contains(document.activeElement);
      node?.replaceWith(fresh);
      if (hadFocus) fresh.querySelector("button")?.focus();
      node = fresh;
    }
    if (list.children[index] !== node) list.insertBefore(node, list.children[index] ?? null);
  });
  for (const gone of known.values()) gone.remove();
}

function make(name, attributes, text = "") {
  const node = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) node.setAttribute(key, value);
  if (text !== "") node.textContent = text;
  return node;
}

// What is done

function onWriting({ form, field, asked, said, log }) {
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    if (field.value.trim() === "") return field.focus();
    const text = field.value;
    field.value = "";
    follow(log);
    if (!(await act(asked(text), said))) field.value = text;
    field.focus();
  });
  field.addEventListener("keydown", (event) => {
    if (event.key !== "Enter" || event.shiftKey || event.isComposing) return;
    event.preventDefault();
    form.requestSubmit();
  });
}

onWriting({
  form: $("home-form"),
  field: $("home-text"),
  asked: (text) => ({ do: "write", as: asHomeowner(), text }),
  said: $("home-said"),
  log: $("home-log"),
});
onWriting({
  form: $("desk-form"),
  field: $("desk-text"),
  asked: (text) => {
    const telling = looking.topic !== null && $("desk-form").elements.way.value === "tell";
    return { do: "write", as: asStaff(), text: telling ? `> ${text}` : text };
  },
  said: $("desk-said"),
  log: $("desk-log"),
});
for (const log of [$("home-log"), $("desk-log")])
  log.addEventListener("scroll", () => {
    log.dataset.follow = String(log.scrollHeight - log.scrollTop - log.clientHeight < 40);
  });

$("photo").addEventListener("click", () => {
  follow($("home-log"));
  act({ do: "photo", as: asHomeowner() }, $("home-said"));
});
for (const button of document.querySelectorAll("[data-line]"))
  button.addEventListener("click", () => {
    $("home-text").value = button.dataset.line;
    $("home-text").focus();
  });
$("homeowner").addEventListener("change", ({ target }) => {
  looking.homeowner = Number(target.value);
  show();
});
$("another").addEventListener("click", async () => {
  const come = await act({ do: "another-homeowner" }, $("home-said"));
  if (come === undefined) return;
  looking.homeowner = looking.coming = come.person;
  show();
  $("home-text").focus();
});
$("staff").addEventListener("change", ({ target }) => {
  looking.staff = Number(target.value);
});
$("clock-form").addEventListener("submit", (event) => {
  event.preventDefault();
  act({ do: "clock", to: $("clock-to").value }, $("state"));
});
$("afresh").addEventListener("click", async () => {
  if (!(await act({ do: "afresh" }, $("state")))) return;
  Object.assign(looking, nothing);
  // The view of the new evening may have come before the answer: it is not sent again.
  show();
});
for (const button of document.querySelectorAll("[data-show]"))
  button.addEventListener("click", () => {
    document.body.dataset.side = button.dataset.show;
    for (const other of document.querySelectorAll("[data-show]"))
      other.setAttribute("aria-pressed", String(other === button));
    newsMark(button.dataset.show).hidden = true;
    for (const log of [$("home-log"), $("desk-log")]) keepUp(log);
  });

for (let hour = 0; hour < 12; hour++) {
  const tick = document.createElementNS("http://www.w3.org/2000/svg", "line");
  tick.setAttribute("y1", "-40");
  tick.setAttribute("y2", hour % 3 === 0 ? "-33" : "-37");
  tick.setAttribute("transform", `rotate(${hour * 30})`);
  $("ticks").append(tick);
}
