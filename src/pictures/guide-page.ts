import type { Wording } from "../conversation/wording.ts";
import { type RatingName, ratings } from "../nameplate/vocabulary.ts";
import { breakersPicture } from "./breakers.ts";
import { drawnRatings, sampleRows } from "./label/sample.ts";
import { numberedLabel } from "./label.ts";
import { facePicture, shaftPicture } from "./mount.ts";
import type { Picture } from "./picture.ts";
import { placesPicture } from "./places.ts";
import { colours } from "./style.ts";
import { escapeXml } from "./svg.ts";

/** The label guide: one HTML page that needs nothing from outside, for paper (both sides of a sheet) or a phone. */
export function guidePage(wording: Wording): string {
  const say = (key: string) => escapeXml(wording.say("pictures", `guide.${key}`));
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${say("title")}</title>
<style>${css}</style>
</head>
<body>
<main>
<h1>${say("title")}</h1>
<p>${say("lead")}</p>
<p class="safety">${say("safety")}</p>
<div class="pair">
${figure(placesPicture("motor", wording))}
${figure(numberedLabel(drawnRatings, wording))}
</div>
<h2>${say("entries")}</h2>
<ol class="entries">
${drawnRatings.map((rating) => `<li>${explained(rating, wording)}</li>`).join("\n")}
</ol>
<h2 class="overleaf">${say("mount")}</h2>
<div class="pair">
${figure(facePicture(wording), ["flange"], wording)}
${figure(shaftPicture(wording), ["shaft", "speedKind"], wording)}
</div>
<h2>${say("place")}</h2>
<div class="pair">
${figure(breakersPicture("poles", wording), ["breakerPoles", "supplyVolts", "breakerAmps"], wording)}
${figure(placesPicture("pump", wording), ["pumpModel"], wording)}
</div>
<p class="foot">${say("foot")}</p>
</main>
</body>
</html>
`;
}

function figure(picture: Picture, about: readonly RatingName[] = [], wording?: Wording): string {
  const texts = wording ? about.map((rating) => `<p>${explained(rating, wording)}</p>`).join("") : "";
  return `<figure>${picture.svg}${texts === "" ? "" : `<figcaption>${texts}</figcaption>`}</figure>`;
}

const captions = new Map<RatingName, string>(
  sampleRows.flat().map(({ rating, caption }) => [rating, caption]),
);

/** The same text that the chat gives: by the word it begins with on the label, else by the rating's name. */
function explained(rating: RatingName, wording: Wording): string {
  const text = wording.say("explain", rating);
  const caption = captions.get(rating);
  if (caption !== undefined && text.startsWith(caption))
    return `<b>${escapeXml(caption)}</b>${escapeXml(text.slice(caption.length))}`;
  const { title } = ratings[rating];
  return `<b>${escapeXml(`${title.slice(0, 1).toUpperCase()}${title.slice(1)}`)}.</b> ${escapeXml(text)}`;
}

const css = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0; background: ${colours.paper}; color: ${colours.ink};
  font: 1rem/1.45 "DejaVu Sans Condensed", Arial, Helvetica, sans-serif; }
main { max-width: 60rem; margin: 0 auto; padding: 1rem; }
h1 { font-size: 1.5rem; line-height: 1.2; margin: 0 0 0.5rem; }
h2 { font-size: 1.15rem; margin: 1.5rem 0 0.5rem; border-bottom: 2px solid ${colours.ink}; }
p { margin: 0 0 0.6rem; }
.safety { border: 2px solid ${colours.ink}; border-left-width: 0.6rem; background: ${colours.white};
  padding: 0.5rem 0.7rem; font-weight: bold; }
figure { margin: 0 -1rem 1rem; max-width: 32rem; break-inside: avoid; }
figcaption { padding: 0 1rem; }
figure svg { display: block; width: 100%; height: auto; }
.pair { display: grid; grid-template-columns: 1fr; gap: 0 1.5rem; justify-items: start; }
.entries { padding: 0; margin: 0; }
.entries li { margin: 0 0 0.5rem 2rem; padding-left: 0.2rem; break-inside: avoid; }
.entries li::marker { font-weight: bold; }
.foot { color: ${colours.pencil}; }
@media (min-width: 46rem), print {
  .pair { grid-template-columns: 1fr 1fr; }
  figure { margin: 0 0 1rem; }
  .entries { columns: 2; column-gap: 1.5rem; }
}
@media print {
  @page { margin: 10mm 12mm; }
  body { background: none; font-size: 8.3pt; line-height: 1.28; }
  main { max-width: none; padding: 0; }
  h1 { font-size: 15pt; margin-bottom: 1.5mm; }
  h2 { font-size: 11pt; margin: 2mm 0 1.5mm; break-after: avoid; }
  .overleaf { break-before: page; margin-top: 0; }
  .pair { justify-items: center; }
  figure { margin-bottom: 0; }
  figure svg { width: 62mm; margin: 0 auto; }
  figcaption { padding: 0; }
  figure svg > rect:first-child { fill: ${colours.white}; }
  .entries li { margin: 0 0 1mm 6mm; padding-left: 0; }
  .safety { padding: 1.2mm 2mm; border-left-width: 2mm; margin-bottom: 2mm; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
  p { margin-bottom: 1.2mm; }
}
`;
