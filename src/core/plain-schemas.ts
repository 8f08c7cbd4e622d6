import * as z from "zod";

// What most parameters take, each made once: a schema takes time to make, and there are hundreds of parameters.

export const NUMBER = z.number();
export const TEXT = z.string();
/** A map of anything. */
export const SETTINGS = z.record(TEXT, z.unknown());
