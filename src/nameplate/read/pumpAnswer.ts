import { isOrdinary } from "./ordinary.ts";
import { fold } from "./token.ts";

/** What people say before the name itself, one piece of it. */
const leadIn =
  /^(?:(?:i|yo) (?:think|believe|guess|creo)|maybe|probably|okay|ok|um|oh|well|creo|pues|it['’]?s|it|that['’]?s|this is|es|pump|model|la bomba|bomba|says|reads|is|dice|called|an|a|the|una|un|la|el|que|[:,-])(?=[\s:,-])[\s:,-]*/i;
const mostLeadIns = 6;

/** Words of talk: with one of them the answer is no name. */
const talk = new Set(
  (
    "yes no nope yeah yep si thanks thank gracias hello hi hey hola there you your me my i im ill ok okay what whats how why when where who which " +
    "can could do does did dont not know idea sure cant see read find please sorry wait help need want have has are is was were will would should " +
    "que como cuando donde no se nada puedo tengo ya bien good great fine later now today tomorrow one else nothing none someone person human motor"
  ).split(" "),
);

/** A short answer that is the pump's own name, as typed: "Marmalade F5", "it's a Ridgemoor 3"; else undefined. */
export function pumpNamed(text: string): string | undefined {
  if (text.length > 100) return undefined;
  let name = text.trim().replace(/[\s.,;!]{1,20}$/u, "");
  for (let seen = 0; seen < mostLeadIns && leadIn.test(name); seen++) name = name.replace(leadIn, "");
  if (name.length < 3 || name.length > 40 || !/^[\p{L}\d][\p{L}\d '’./-]*$/u.test(name)) return undefined;
  const words = name.split(/\s+/);
  if (words.length > 5 || words.some((word) => talk.has(fold(word).replace(/['’]/g, "")))) return undefined;
  const lettered = words.filter((word) => /\p{L}{2}/u.test(word));
  const figured = /\d/.test(name);
  // A figure with a label word is a rating: "230 volts", "1.5 hp".
  const unknown = lettered.some((word) => word.length > 2 && !isOrdinary(fold(word)));
  if (!unknown) return undefined;
  return figured || lettered.every((word) => /^\p{Lu}/u.test(word)) ? name : undefined;
}
