/** What a worker is sent to leave the question in hand; no question, since those are JSON. */
export const STOP = 'stop';
