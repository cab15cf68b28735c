/** mm in an inch, by its definition of 1959. Lengths are mm everywhere; only what is shown or entered may be inches. */
export const INCH = 25.4;
