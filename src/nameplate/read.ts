export { readMessage, valuesOf } from "./read/message.ts";
