/** Spellings of sides, ends, corners and wheels. Data only. */
import type { PlaceParts } from '../place.ts';

export const placeWords: readonly (readonly [string, PlaceParts])[] = [
  [
    'left|l|lh|l/h|l/s|l side|lhs|left hand|left side|l hand|l/hand|lft|lt|lh side|left hand side|l side|lefthand|leftside',
    { side: 'left' },
  ],
  [
    'right|write|r|rh|r/h|r/s|rhs|right hand|right side|r hand|r/hand|rht|rt|rh side|right hand side|r side|write side|write hand|righthand|rightside',
    { side: 'right' },
  ],
  [
    'both|at either|on either|in either|l/r|both sides|each side|either side|pair|both of them|each|l and r|left and right|l & r|the two sides|two sides',
    { side: 'both' },
  ],
  [
    'front|nose|nose end|front of the coach|frnt|frt|fnt|front end|fronts|fwd end|frnts|front corners',
    { end: 'front' },
  ],
  ['both fronts|fronts both', { side: 'both', end: 'front' }],
  ['both rears|rears both', { side: 'both', end: 'rear' }],
  ['both right rears|both right rear|both rh rears', { side: 'right', end: 'rear' }],
  ['both left rears|both left rear|both lh rears', { side: 'left', end: 'rear' }],
  [
    'rear|rears|ass end|butt end|arse|tail|hind end|stern|back|back end|whole back end|whole rear|arse end|tail end|back of the coach|rear end|aft end|bak|rear corners|at the back|the back',
    { end: 'rear' },
  ],
  [
    'lr|behind left|left behind|left back corner|back left corner|left rear|lhr|rl|left back|rear left|back left|lft rear|l rear|lrear|left rr|rear lh|rear l/h|lh rear|l/h rear|lhs rear|rear lhs|left hand rear|lr corner|left rear corner|lt rear|back lh|rear left corner|lr side',
    { side: 'left', end: 'rear' },
  ],
  [
    'rr|behind right|right behind|right back corner|back right corner|right rear|rhr|right back|rear right|back right|rt rear|rht rear|r rear|rrear|rear rh|rear r/h|rh rear|r/h rear|rhs rear|rear rhs|right hand rear|rr corner|right rear corner|write rear|back rh|rear right corner|rr side',
    { side: 'right', end: 'rear' },
  ],
  [
    'lf|left front|lhf|fl|front left|lft front|lft frnt|lt f|l front|front lh|lh front|l/h front|lhs front|front lhs|left hand front|lf corner|left front corner|lt front|left frnt',
    { side: 'left', end: 'front' },
  ],
  [
    'rf|right front|rhf|front right|rt front|rht frnt|rt f|r front|front rh|rh front|r/h front|rhs front|front rhs|right hand front|rf corner|right front corner|right frnt|write front',
    { side: 'right', end: 'front' },
  ],
  ['rear forward axle|forward rear axle', { end: 'rear', wheel: 'forward', part: 'axle' }],
  ['rear aft axle|aft rear axle', { end: 'rear', wheel: 'aft', part: 'axle' }],
  ['rear forward tyre|rear forward tyres', { end: 'rear', wheel: 'forward', part: 'tyre' }],
  ['rear aft tyre|rear aft tyres', { end: 'rear', wheel: 'aft', part: 'tyre' }],
  ['leftbag', { side: 'left', part: 'bellows' }],
  ['rightbag', { side: 'right', part: 'bellows' }],
  ...(['left', 'right'] as const).map((side): readonly [string, PlaceParts] => [
    `line from the ${side} height valve to the panel|line from the ${side} valve to the panel|line from ${side} valve to panel|line between the ${side} height valve and the panel|line between the ${side} valve and the panel`,
    { side, part: 'valve to panel line' },
  ]),
];

/** Sides named by what is there; which side that is depends on the traffic the coach was built for. */
export const relativeSides: readonly (readonly [string, 'driver' | 'kerb' | 'street' | 'passenger'])[] = [
  [
    'driver side|drivers side|driver|drv side|drvr side|drvr|drvrs side|drivr side|driv side|ds|drivers|driverside|driver s side|d side|dr side',
    'driver',
  ],
  ['passenger side|pass side|passengers side|ps|passenger|pax side|passenger s side|p side|pass', 'passenger'],
  ['curb side|curbside|kerb side|kerbside|curb|kerb|near side|nearside|n/s|ns|door side', 'kerb'],
  ['street side|streetside|road side|roadside|off side|offside|o/s|os', 'street'],
];
/** Glued forms with an end: n/s/r, nsr, osf ... */
export const relativeCorners: readonly (readonly [string, 'kerb' | 'street', 'front' | 'rear'])[] = [
  ['n/s/r|nsr|n/s rear|nearside rear|ns rear|n/s/rear|near side rear|rear n/s|rear nearside', 'kerb', 'rear'],
  ['n/s/f|nsf|n/s front|nearside front|ns front|near side front|front n/s|front nearside', 'kerb', 'front'],
  ['o/s/r|osr|o/s rear|offside rear|os rear|off side rear|rear o/s|rear offside', 'street', 'rear'],
  ['o/s/f|osf|o/s front|offside front|os front|off side front|front o/s|front offside', 'street', 'front'],
];

/** Which wheel of a side of the tandem; only read beside a rear side and a wheel, tyre, toe or camber. */
export const wheelWords: readonly (readonly [string, 'forward' | 'aft'])[] = [
  [
    'forward|fwd|leading axle|lead axle|drive axle|front wheel|fwd wheel|forward wheel|leading|lead|front of the two|front one|front axle of the tandem|front tandem|drive|first wheel|leading wheel|lead wheel',
    'forward',
  ],
  [
    'aft|trail axle|trail wheel|tag|tag axle|trailing axle|rear wheel|aft wheel|trailing|rearmost|rear one|back wheel|back one|rear tandem|trailing wheel|second wheel',
    'aft',
  ],
];
