/**
 * Things of a coach that share a word with a part of ours and are none: what is said of them is shown unread, and never
 * taken for the part. Lower case, apostrophes left out. Data only; common practice, no source.
 */
export const strangers: ReadonlySet<string> = new Set(
  (
    'sway bar|sway bar link|sway bar links|sway bar bushing|sway bar bushings|anti roll bar|anti roll bar link|anti roll bar links|roll bar|' +
    'stabilizer bar|stabiliser bar|stabilizer link|stabiliser link|stabilizer links|stabiliser links|' +
    'track rod|track rod end|track rod ends|tie rod|tie rod end|tie rod ends|drag link|drag link end|steering arm|pitman arm|' +
    'tow bar|draw bar|prop shaft|drive shaft|drive line|half shaft|wiper arm|mirror arm|door valve|door cylinder|parking valve|' +
    'foot valve|treadle valve|relay valve|quick release valve|wiper motor|heater valve|expansion valve|egr valve|fuel line|fuel lines|' +
    'oil line|coolant line|brake valve|slack adjuster|slack adjusters|air door|air horn|driver seat|drivers seat|passenger seat|exhaust pipe|exhaust stack|exhaust manifold|steering wheel|wheel spray|road spray|tyre spray|tire spray|expansion joint|expansion joints|seat valve|seat bag|seat air bag'
  ).split('|'),
);
/** The most words of one. */
export const longestStranger = 4;
/** The words that one begins with. */
export const strangerLeads: ReadonlySet<string> = new Set([...strangers].map((one) => one.split(' ')[0]!));
