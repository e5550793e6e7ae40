export { mentioned, readMessage, valuesOf } from "./read/message.ts";
