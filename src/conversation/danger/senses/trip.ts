import { patterns } from "../pattern.ts";

/** A breaker, GFCI or fuse that opens by itself, or does not stay closed. */
export const tripSense = patterns(
  "@trip",
  "@device ~3 ^trip",
  "(it|pump|motor|will|to|does|did|makes|make|would|may|keep|just) ^trip ~3 @device",
  "^trip ~2 @device",
  "@device ~3 ^@popOff !(on|in|up)",
  "^@popOff ~3 @device",
  "^(popping|kicking|throwing|blowing|pops|blows|kicks|knocks|blew|popped) (off|out)? ~2 (outlet|power|plug|receptacle)",
  "@device !(is|was|are|were|be|been|has) ~2 ^@goOff ~2 (off|out|down)",
  "@device ~2 (keeps|kept|keep) ~1 ^@goOff",
  "(@device|@socket) ~2 @refuses ~2 ^(stay|stays|staying|hold|holds|holding|reset|resets|set|stick|latch|stand)",
  "@device ~2 ^(refuses|impossible) ~1 (stay|hold|reset)",
  "(cant|cannot|wont|couldnt|unable) ~4 @device ~2 ^(stay|reset|hold|on|set)",
  "(cant|cannot|couldnt) ~2 ^reset ~3 @device",
  "(had to|have to|has to|having to|keep|keeps|kept|gotta|constantly|always) ~1 ^(reset|resetting|resets) ~3 @device",
  "^(reset|resetting|resets) ~3 @device ~~5 (times|again|everyday|daily|morning|twice|constantly|each|every|x)",
  "(had to|have to|keep|keeps|kept|gotta) ~1 ^(flip|flipping|turn|turning|switch|switching) ~3 @device ~2 (back|on)",
  "(it|pump|motor|which|that|thing) ~2 ^(shuts|cuts|turns|knocks|takes|took|kills|flips|flipped|shut|cut|knocked|killed|kicks) ~1 (off|out|down)? ~1 @device",
  "(click|clicks|bang|pop|hums|hum) ~~2 ^@device off",
  "(se|me|nos) ~1 ^@fallEs ~3 @device",
  "(se|me|nos) ^(bota|botan|boto|baja|bajan|bajo|brinca|brinco|tumba|corta) ~1 (luz|corriente|electricidad)",
  "@device ~3 (se|me) ~1 ^@fallEs",
  "@device ~2 ^(salta|salto|saltando|brinca|brinco|bota|boto|dispara|baja|brincando|botando|disparando|bajando|saltar|brincar|disparar|botar)",
  "^(salta|saltan|bota|botan|brinca|brincan|dispara|tumba|tumban|baja|bajan|bajo|tiro|tira|tumbo|boto|brinco|salto|disparo|truena|trona|avienta|botando|bajando|tumbando|brincando|saltando|quema|quemo|revienta|revento) ~2 @device",
  "^resetear ~3 @device",
);
