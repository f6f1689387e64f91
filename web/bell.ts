/** What a ringing timer does to the room: a tone, a buzz, and a screen kept awake while one runs. All of it optional. */
let audio: AudioContext | null = null;

/** Two short tones. Silent where the browser wants a tap first. */
export const ring = (): void => {
  try {
    audio ??= new AudioContext();
    const at = audio.currentTime;
    for (const [start, hz] of [
      [0, 880],
      [0.25, 1175],
    ] as const) {
      const tone = audio.createOscillator();
      const loud = audio.createGain();
      tone.frequency.value = hz;
      loud.gain.setValueAtTime(0.0001, at + start);
      loud.gain.exponentialRampToValueAtTime(0.4, at + start + 0.02);
      loud.gain.exponentialRampToValueAtTime(0.0001, at + start + 0.22);
      tone.connect(loud).connect(audio.destination);
      tone.start(at + start);
      tone.stop(at + start + 0.25);
    }
  } catch {
    // no sound here: the frame on the screen has to do
  }
  navigator.vibrate?.([200, 100, 200]);
};

let lock: WakeLockSentinel | null = null;
let asking = false;
let wanted = false;

/**
 * Keeps the screen on while `on`; browsers give it only over https or on this machine, and take it when the page is
 * hidden. One lock at a time: a second one asked for meanwhile would never be given back.
 */
export const keepAwake = async (on: boolean): Promise<void> => {
  wanted = on;
  if (asking) return;
  try {
    if (on && lock === null && 'wakeLock' in navigator && document.visibilityState === 'visible') {
      asking = true;
      const held = await navigator.wakeLock.request('screen');
      lock = held;
      held.addEventListener('release', () => {
        if (lock === held) lock = null;
      });
    }
    if (!wanted && lock !== null) {
      const held = lock;
      lock = null;
      await held.release();
    }
  } catch {
    lock = null;
  } finally {
    asking = false;
  }
};

document.addEventListener('visibilitychange', () => {
  if (wanted) void keepAwake(true);
});
