export { onScreen } from "../units/on-screen.ts";
