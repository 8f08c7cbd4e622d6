/** Lets a waiting Ctrl-C in before the next part. */
export const breath = (): Promise<void> => new Promise((resume) => setImmediate(resume));
