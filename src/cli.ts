import { Command } from "commander";
import { endKindly } from "./exit.ts";

// Each command is loaded when it is called: most need only a part of the program.

const program = new Command("nameplate").description("From a worn nameplate to the motor that replaces it.");

program
  .command("read")
  .description("read messages: JSON lines {id, text} in, readings out")
  .action(() => endKindly(async () => (await import("./commands/read.ts")).runRead()));

program
  .command("match")
  .description("judge a stock: JSON lines {id, nameplate, site} in, verdicts out")
  .requiredOption("--catalogue <file>", "the stock, as CSV")
  .option("--all", "list the motors ruled out as well")
  .option("--on <date>", "date the sale rule is judged on, YYYY-MM-DD (default: today)")
  .action((options) => endKindly(async () => (await import("./commands/match.ts")).runMatch(options)));

program
  .command("chat")
  .description("talk to the bot in the terminal")
  .option("--json", "JSON lines {thread, text, at?} in, replies out; keeps nothing unless --store is given")
  .option("--catalogue <file>", "take the motors from this CSV")
  .option("--store <file>", "keep threads and cases in this SQLite file")
  .action(({ json, catalogue, store }) => {
    const files = { catalogueFile: catalogue, storeFile: store };
    return endKindly(async () =>
      json
        ? (await import("./commands/chat-json.ts")).runChatJson(files)
        : (await import("./main.ts")).startTerminal(files),
    );
  });

program
  .command("cases")
  .description("what waits on the desk, most urgent first")
  .option("--store <file>", "the SQLite file to look into")
  .action(({ store }) => endKindly(async () => (await import("./commands/cases.ts")).runCases(store)));

program
  .command("case <number>")
  .description("one case with its brief and history")
  .option("--store <file>", "the SQLite file to look into")
  .action((number, { store }) =>
    endKindly(async () => (await import("./commands/cases.ts")).runCase(number, store)),
  );

program
  .command("desk")
  .description("the staff's side in this terminal: list, take, answer, close")
  .option("--as <name>", "who sits here; customers see this name", "The desk")
  .option("--beside", "another channel delivers the desk's messages; show only answers here")
  .option("--store <file>", "the SQLite file to work on")
  .action((options) => endKindly(async () => (await import("./commands/desk.ts")).runDesk(options)));

const numbers = program
  .command("numbers")
  .description("old numbers on record: which motor was sold for them, by whom, when")
  .option("--csv", "as CSV")
  .option("--came-back", "instead, the findings that had spoken for motors that came back as wrong")
  .option("--store <file>", "the SQLite file to look into")
  .action((options) => endKindly(async () => (await import("./commands/numbers.ts")).runNumbers(options)));

numbers
  .command("strike <place>")
  .description("take one off the record, by its place in the list")
  .option("--as <name>", "who does it", "The desk")
  .option("--store <file>", "the SQLite file to work on")
  .action((place, _, command) =>
    endKindly(async () =>
      (await import("./commands/numbers.ts")).runStrike(place, command.optsWithGlobals()),
    ),
  );

program
  .command("import [file]")
  .description("what a CSV would change in the stock; with --write make it the stock")
  .option("--write", "replace the table, all or nothing")
  .option("--skip-bad", "leave rows out that cannot be used, and go on")
  .option("--undo", "take back the last import")
  .option("--pumps", "the table of pumps instead of the motors")
  .option("--spares", "the table of spares instead of the motors")
  .option("--all", "show every finding, not the first 20 of each kind")
  .option("--store <file>", "the SQLite file to write into")
  .action((file, options) =>
    endKindly(async () => (await import("./commands/import.ts")).runImport(file, options)),
  );

program
  .command("export")
  .description("the stock as CSV, as import reads it")
  .option("--pumps", "the table of pumps instead of the motors")
  .option("--spares", "the table of spares instead of the motors")
  .option("--store <file>", "the SQLite file to read")
  .action((options) => endKindly(async () => (await import("./commands/export.ts")).runExport(options)));

program
  .command("report")
  .description("what was asked for and not found, where the desk overruled the rules, how long people waited")
  .option("--days <n>", "so many days back, today among them", "30")
  .option("--csv", "one row a request")
  .option("--svg <file>", "as a picture")
  .option("--png <file>", "as a picture")
  .option("--store <file>", "the SQLite file to look into")
  .action((options) => endKindly(async () => (await import("./commands/report.ts")).runReport(options)));

program
  .command("guide")
  .description("print the label guide: one HTML page with pictures, for paper or phone")
  .action(() => endKindly(async () => (await import("./commands/guide.ts")).runGuide()));

program
  .command("backup <file>")
  .description("copy the store to a new file, checked, while the desk works")
  .option("--store <file>", "the SQLite file to copy")
  .action((file, { store }) =>
    endKindly(async () => (await import("./commands/backup.ts")).runBackup(file, store)),
  );

program
  .command("restore <backup>")
  .description("put a backup in the place of the store; the one that was there is kept beside it")
  .option("--stopped", "nothing runs on the store: needed only when it is too damaged to tell")
  .option("--store <file>", "the SQLite file to replace")
  .action((backup, options) =>
    endKindly(async () => (await import("./commands/restore.ts")).runRestore(backup, options)),
  );

program
  .command("doctor")
  .description("look at settings, files, store and Telegram; exit status 1 when something is wrong")
  .option("--store <file>", "the SQLite file to look at")
  .action((options) => endKindly(async () => (await import("./commands/doctor.ts")).runDoctor(options)));

program
  .command("customer-data [thread]")
  .description("everything kept of one customer, as JSON")
  .option("--case <number>", "the customer of this case")
  .option("--store <file>", "the SQLite file to read")
  .action((thread, options) =>
    endKindly(async () => (await import("./commands/customer-data.ts")).runCustomerData(thread, options)),
  );

await program.parseAsync();
