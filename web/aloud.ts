/** Read-aloud, by voices that live in this browser only: what is said in a shop is not sent to anyone's server. */
const localVoice = (): SpeechSynthesisVoice | null => {
  if (!('speechSynthesis' in window)) return null;
  const voices = speechSynthesis.getVoices().filter((v) => v.localService);
  return voices.find((v) => v.lang.startsWith('en')) ?? voices[0] ?? null;
};

export const canSpeak = (): boolean => localVoice() !== null;

export const speak = (words: string): void => {
  const voice = localVoice();
  if (voice === null) return;
  speechSynthesis.cancel();
  const u = new SpeechSynthesisUtterance(words);
  u.voice = voice;
  speechSynthesis.speak(u);
};

export const hush = (): void => {
  if ('speechSynthesis' in window) speechSynthesis.cancel();
};
