import { chosenSpots } from "../../src/solve/choosing/chosen-spots.ts";
import { shippedGuide } from "./shipped-guide.ts";

/** What is chosen for each spot of the shipped guide's swims, and why. */
export const shippedSpots = chosenSpots(shippedGuide.library);
