/** Spellings of what is measured. Data only. */
import type { measures } from '../names.ts';

export const measureWords: Readonly<Partial<Record<(typeof measures)[number], string>>> = {
  pressure:
    'pressure|press|pres|presure|pressur|preasure|air pressure|air at|air is at|air was at|air reads|reads|reading|p',
  'cut-in':
    'wont kick in until|wont kick in till|wont kick in til|wont kick on until|wont kick on till|wont kick on til|wont come on until|wont come on till|wont come on til|wont cut in until|wont cut in till|wont cut in til|wont start until|wont start till|wont start til|wont turn on until|wont turn on till|wont turn on til|wont come in until|wont come in till|wont come in til|doesnt kick in until|doesnt kick in till|doesnt kick in til|doesnt kick on until|doesnt kick on till|doesnt kick on til|doesnt come on until|doesnt come on till|doesnt come on til|doesnt cut in until|doesnt cut in till|doesnt cut in til|doesnt start until|doesnt start till|doesnt start til|doesnt turn on until|doesnt turn on till|doesnt turn on til|doesnt come in until|doesnt come in till|doesnt come in til|does not kick in until|does not kick in till|does not kick in til|does not kick on until|does not kick on till|does not kick on til|does not come on until|does not come on till|does not come on til|does not cut in until|does not cut in till|does not cut in til|does not start until|does not start till|does not start til|does not turn on until|does not turn on till|does not turn on til|does not come in until|does not come in till|does not come in til|not kick in until|not kick in till|not kick in til|not kick on until|not kick on till|not kick on til|not come on until|not come on till|not come on til|not cut in until|not cut in till|not cut in til|not start until|not start till|not start til|not turn on until|not turn on till|not turn on til|not come in until|not come in till|not come in til|cut in point|turn on point|turn on pressure|kick in point|kick on point|kicks in at|kicks on at|comes in at|cuts in at|turns on at|restarts at|lower set point|low set point|cut in pressure|in point|starts by itself at|starts itself at|starts on its own at|cut in|back in at|back on at|comes back in at|comes back on at|and in at|back on again at|cutin|kicks in|kick in|kicks on|kicked in|kicked on|cuts in|comes on|came on|turns on|starts at|on at|cut in at|turned on|cuts on|cut on|starts up at|cutting in|started at|comes in|kick on|goes on at|came in|pump on at|switches on|switched on|start at|pump start at',
  'cut-out':
    'wont shut off until|wont shut off till|wont shut off til|wont cut out until|wont cut out till|wont cut out til|wont kick off until|wont kick off till|wont kick off til|wont stop until|wont stop till|wont stop til|wont turn off until|wont turn off till|wont turn off til|wont quit until|wont quit till|wont quit til|doesnt shut off until|doesnt shut off till|doesnt shut off til|doesnt cut out until|doesnt cut out till|doesnt cut out til|doesnt kick off until|doesnt kick off till|doesnt kick off til|doesnt stop until|doesnt stop till|doesnt stop til|doesnt turn off until|doesnt turn off till|doesnt turn off til|doesnt quit until|doesnt quit till|doesnt quit til|does not shut off until|does not shut off till|does not shut off til|does not cut out until|does not cut out till|does not cut out til|does not kick off until|does not kick off till|does not kick off til|does not stop until|does not stop till|does not stop til|does not turn off until|does not turn off till|does not turn off til|does not quit until|does not quit till|does not quit til|not shut off until|not shut off till|not shut off til|not cut out until|not cut out till|not cut out til|not kick off until|not kick off till|not kick off til|not stop until|not stop till|not stop til|not turn off until|not turn off till|not turn off til|not quit until|not quit till|not quit til|cut out point|shut off point|shut off pressure|turn off point|turn off pressure|cuts out at|kicks off at|kicks out at|turns off at|shuts down at|knocks off at|upper set point|high set point|cut off pressure|cut out pressure|shutoff pressure|shut down pressure|out point|stops by itself at|stops itself at|stops on its own at|cut out|cutout|kicks out|kick out|kicks off|kicked out|kicked off|cuts out|shuts off at|cut off|cuts off|turns off|stops at|off at|shut off at|turned off|shuts off|shut off|cutoff|goes off|goes off at|cutting out|quits at|stopped at|went off|switches off|switched off|cut out at|stop at',
  height:
    'hts|ride height measurement|frame height|frame ht|chassis height|measured height|tape measurement|suspension height|height measurement|trim height|rideheight|bag height|height|ride height|ht|hgt|heights|ride ht|measures|measured|tape|tapes|taped|sits at|stands at|ride heights|hite',
  voltage: 'voltage reading|volt reading|potential|dc volts|volts|voltage|volt',
  'voltage drop': 'voltage drop|volt drop|drop across|volts drop|v drop|vdrop|volts dropped|volt loss|loses across',
  current:
    'amp clamp reads|amp clamp|clamp meter|clamp on meter|clamp ammeter|ammeter reads|ammeter|amp reading|amp clamp reading|load current|current|amps|amp draw|draw|draws|pulls|drawing|pulling|amperage|amp|taking|amps draw|current draw',
  resistance: 'resistance|ohms|ohm reading',
  temperature: 'temperature|temp|temps',
  humidity: 'relative humidity|r h percent|moisture in the air|humidity|rh%|rel humidity',
  toe: 'toe reading|toe setting|toe angle|toe|total toe|toe total|tow in|tow out|tow in on|toe in|toe out|toed|toes',
  camber: 'camber angle|camber reading|wheel lean|camber setting|camber|chamber angle|cambre',
  thrust: 'thrust|thrust angle',
  'tyre diameter': 'tyre diameter|tire diameter|wheel diameter',
  'rim diameter': 'rim diameter|rim dia',
  torque: 'torque value|tq|tightened to|torque|torqued|torqued to|torque to',
  load: 'weighs|weight|weighed|wt',
  'on time': 'on time|on for|runs for|ran for|run for',
  'off time': 'off time|rests|then off for|and off for|off for|rests for|rest for',
  'run time': 'ran|run time|running for|been running|has run',
  'wheelbase difference': 'wb|wheelbase difference|wheelbase is|wheelbase|wheel base is|wheel base|wheelbase diff',
  'restart time':
    'starts again after|starts up again after|comes back on after|comes back after|restarts after|back on after|runs again after|restarted after|returns after|resets after|comes back in',
  'standing time':
    'parked for|parked|standing for|stood for|sat for|sitting for|been sitting|stood|sat|been parked|been stood|standing',
  'settling time':
    'settling|settling time|settle time|to settle|settled for|since pumping|since pumped|after pumping|after pump up|settled|since it was pumped|since levelling|after levelling|since pump stopped',
  delay:
    'reaction time|response time|dead time|delay|to react|to respond|before it acts|before it reacts|before it moves|to act|time delay|reacts after|delay time',
  'dead band': 'dead band|deadband|dead zone|free travel',
  'arm length': 'arm length|lever length',
  odometer:
    'miles on the clock|odometer reading|km reading|hub odometer|hubodometer|speedo reads|odometer|odo|mileage|clock reading|on the clock',
  'distance driven': 'drove|driven|road test|drive of|test drive|drove it',
  'wire length': 'wire length|cable length|run of cable',
  'wire gauge': 'awg|ga wire|gauge wire|ga',
  flow: 'flow|delivery rate|delivers',
  altitude: 'altitude|elevation|elev|above sea level',
  barometer: 'barometer|baro|barometric',
  'specific gravity': 'specific gravity|sg|hydrometer|gravity',
  'load test': 'load test|load tested|loadtest|carbon pile',
  'free play': 'end float|looseness|lash|side play|end float of|free play|play|slop|freeplay|endplay|end play',
  'shim thickness': 'shim thickness|shim of|shims of',
};
