import { list } from "../wordlist.ts";

/** A character of the value is said to be missing, or the writer hesitates between two. */
export const partialPhrases: readonly string[] = list(`
  something, somethin, somthing, smth, sumthin, start with, starts with, starting with, begins with, ends
  in, ends with, ending in, either, and then a, then a, and then maybe, then maybe, and then nothing, and
  then rust, and then blank, could be a, could be, cant tell which, cant tell if, not sure which, not sure
  if, dont know which, or maybe, and a blob, blob, smudge, algo, y algo, empieza con, termina en, no se si,
  o quizas, o tal vez, puede ser, first digit, last digit, middle digit, second digit, digit, digits, half
  of the number, might be a, blank something, whatever, first letter, last letter, letter is, no distingo
  si, half the number, part of the number, cut off, looks like either, luego una letra, una letra, luego nada, despues nada, y ya nada, y nada mas, empiezan
  con, terminan en, no se cual, no le puedo decir
`);

/** The rating is on the label but cannot be read, or is not on it. */
export const illegiblePhrases: readonly string[] = list(`
  cant read, can not read, cannot read, couldnt read, could not read, unable to read, cant make out, cannot
  make out, can not make out, couldnt make out, cant see, cannot see, can not see, cant tell, cannot tell,
  can not tell, couldnt tell, cant find, cannot find, can not find, couldnt find, couldnt see, hard to read,
  impossible to read, illegible, unreadable, unlegible, not legible, not readable, isnt legible, isnt
  readable, worn, worn off, worn out, worn away, faded, faded out, fading, rubbed, rubbed off, rubbed out,
  scratched, scratched off, scratched out, gone, missing, blank, bleached, sanded, rusted, rusty, rust,
  corroded, eaten, peeled, peeled off, torn, torn off, ripped, smudged, smeared, washed out, washed off, not
  listed, not shown, not there, not on it, not on there, not on the label, not printed, not marked, not
  given, not stated, isnt there, isnt listed, isnt on, isnt on there, isnt shown, isnt printed, doesnt say,
  does not say, doesnt list, doesnt show, doesnt have, does not list, does not show, no such thing, have
  none, has none, shows none, no where, nowhere, n / a, na, unknown, idk, dont see, do not see, didnt see,
  dont know, do not know, no idea, no clue, not sure, read everything but, read everything except, see
  everything but, see everything except, make out everything but, make out everything except, read all but,
  read all except, leer todo menos, leer todo excepto, wiped, burned off, burnt off, painted over, covered,
  got hit, unclear, not clear, not visible, isnt visible, invisible, obscured, damaged, destroyed, melted,
  chewed, no se ve, no se lee, no se puede leer, no se ven, no se leen, no puedo leer, no puedo ver, no lo
  veo, no veo, no lo puedo leer, no se alcanza a leer, no se alcanza a ver, no alcanzo a leer, no alcanzo a
  ver, borrado, borrada, borrados, borradas, se borro, se borraron, se perdio, se perdieron, se le perdio, se despinto, se despintaron, se desgasto, se desgastaron, se cayo, se cayeron, se rayo, se rayaron, se raspo, se rasparon, se rompio, se rompieron, ilegible, ilegibles, falta, faltan, no
  aparece, no aparecen, no viene, no tiene, no dice, no encuentro, gastado, gastada, despintado, despintada,
  oxidado, oxidada, not able to read, wont read, cant get, cant decipher, dont have, havent got, cant quite
  read, can't quite make out, cant quite make out, barely legible, under rust, sunburned, sun burned,
  weathered, unmarked, scraped, scratched away, blacked out, not filled in, left blank, dissolved, disappeared, vanished, scraped off, scuffed, scuffed off, mangled, crusty, stripped,
  erased, no longer legible, lost, too faint, faint, can hardly read, cant hardly read, obliterated, burned,
  not legible anymore, no legible, no hay, stain, green stain, paint over, no trae, no traen, se le borro,
  se borro, no trae el, empty, bare, vacio, vacia, en blanco, whited out, bleached out, sun bleached, got
  scraped, worn down, rotted, rotted off, ate it, ate up, cant make it out, cannot make it out, cant see it,
  cant find it, couldnt get, smears, cant, couldnt, cannot, can not, could not, unable to, no puedo, no
  pude, no logro, illegibly, not readible, unreadible, beats me, all i can see of, all i can make out of, fell off, fallen off, flaked off, chipped off, se le borraron, se borraron, borroso, borrosa, borrosos, borrosas, tapado, tapada, manchado, manchada, sunbleached, sunfaded, sunburnt, sunburned, bleached away, hopeless, no luck, no chance, a lost cause, rayado, rayada, raspado, raspada
`);
