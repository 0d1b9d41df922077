/** Idle screws as a symptom of throttle plate position. */
/** Likely cause and cure where mixture screws have no effect; goes on after a colon. Common practice, no source. */
export const PLATES_TOO_FAR_OPEN =
  'the throttle plates may be too far open, so fuel comes from the transfer slot instead. Close the primary plates and let the idle air in another way: secondary stop, more initial advance';
