/** Says a cue aloud, where the phone has a voice; a new one takes the place of the last. @param {string} words */
export function say(words) {
  if (!('speechSynthesis' in globalThis)) return;
  speechSynthesis.cancel();
  speechSynthesis.speak(Object.assign(new SpeechSynthesisUtterance(words), { lang: 'en', rate: 0.95 }));
}
