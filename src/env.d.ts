/// <reference types="astro/client" />

declare namespace App {
  interface Locals {
    /** Id of the worked example the page is read with, from content/examples.json. */
    example?: string;
    /** Whether the lesson is rendered as frames for a room. */
    frames?: boolean;
    /** Whether the page has the knots of tied rows already. */
    tiedKnots?: boolean;
  }
}
