/** Breaks lines at spaces so that none is wider than `width` characters; a bullet's next lines are indented. */
export function wrap(text: string, width: number): string {
  return text
    .split("\n")
    .map((line) => wrapLine(line, width))
    .join("\n");
}

function wrapLine(line: string, width: number): string {
  const indent = line.startsWith("• ") ? "  " : "";
  const rows: string[] = [];
  let row = "";
  for (const word of line.split(" ")) {
    const longer = row === "" ? word : `${row} ${word}`;
    if (longer.length > width && row.trim() !== "") {
      rows.push(row);
      row = `${indent}${word}`;
    } else row = longer;
  }
  return [...rows, row].join("\n");
}
