import { Command } from "commander";
import { runCase, runCases } from "./commands/cases.ts";
import { runChatJson } from "./commands/chat-json.ts";
import { runImport } from "./commands/import.ts";
import { runMatch } from "./commands/match.ts";
import { runRead } from "./commands/read.ts";
import { endKindly } from "./exit.ts";
import { startTerminal } from "./main.ts";

const program = new Command("nameplate").description("From a worn nameplate to the motor that replaces it.");

program
  .command("read")
  .description("read messages: JSON lines {id, text} in, readings out")
  .action(() => endKindly(runRead));

program
  .command("match")
  .description("judge a stock: JSON lines {id, nameplate, site} in, verdicts out")
  .requiredOption("--catalogue <file>", "the stock, as CSV")
  .option("--all", "list the motors ruled out as well")
  .option("--on <date>", "date the sale rule is judged on, YYYY-MM-DD (default: today)")
  .action((options) => endKindly(() => runMatch(options)));

program
  .command("chat")
  .description("talk to the bot in the terminal")
  .option("--json", "JSON lines {thread, text, at?} in, replies out; keeps nothing unless --store is given")
  .option("--catalogue <file>", "take the motors from this CSV")
  .option("--store <file>", "keep threads and cases in this SQLite file")
  .action(({ json, catalogue, store }) => {
    const files = { catalogueFile: catalogue, storeFile: store };
    return endKindly(() => (json ? runChatJson(files) : startTerminal(files)));
  });

program
  .command("cases")
  .description("what waits on the desk, most urgent first")
  .option("--store <file>", "the SQLite file to look into")
  .action(({ store }) => endKindly(() => runCases(store)));

program
  .command("case <number>")
  .description("one case with its brief")
  .option("--store <file>", "the SQLite file to look into")
  .action((number, { store }) => endKindly(() => runCase(number, store)));

program
  .command("import <file>")
  .description("check a stock CSV; with --write make it the stock")
  .option("--write", "replace the stock, all or nothing")
  .option("--store <file>", "the SQLite file to write into")
  .action((file, options) => endKindly(() => runImport(file, options)));

await program.parseAsync();
