/** A question whose fields but `K` have a usual value, and may be left out. */
export type Asked<Q, K extends keyof Q> = Pick<Q, K> & Partial<Q>;

/** What a tool says: the answer, or what is wrong with the question. */
export type Result<A> =
  | { answer: A; problems?: undefined }
  | { answer?: undefined; problems: Problem[] };

/** What was read from a text, with the unit that was written; or why nothing was. */
export type Reading<T> =
  | { value: T; unit: Unit | null; unreadable?: undefined }
  | { value?: undefined; unit?: undefined; unreadable: Unreadable };
