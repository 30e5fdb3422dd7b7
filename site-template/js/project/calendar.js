// A plan as a calendar (RFC 5545), the same bytes as the generator's own PlanCalendar writes: an event
// for every piece of work, recoat window and time to stay out of the room, with alarms. Floating times:
// the wall clock wherever the calendar is.

import * as units from '../page/units.js';
import * as steps from './steps.js';

const FOLD = 70; // characters; a few of two octets still leave a line within 75 octets

function compact(iso) {
  return iso.slice(0, 19).replace(/[-:]/g, '').padEnd(15, '0');
}
function escaped(text) {
  return text.replace(/[\\;,]/g, '\\$&').replace(/\n/g, '\\n');
}
function plain(text) {
  return text
    .replace(/\u00a0/g, ' ')
    .replace(/\u202f/g, '')
    .replace(/[–\u2212]/g, '-');
}

// Spaces at the fold stay on the line they end, where they can't be taken for the fold's own.
function folded(name, value) {
  let out = name + ':';
  let length = out.length;
  let start = 0;
  for (let i = 0; i < value.length; i++) {
    if (length >= FOLD) {
      while (/\s/.test(value.charAt(i)) && i < value.length - 1) {
        i++;
      }
      if (/[\udc00-\udfff]/.test(value.charAt(i))) {
        i++;
      }
      if (i >= value.length - 1 && i > start && /\s/.test(value.charAt(i))) {
        break;
      }
      out += value.slice(start, i) + '\r\n ';
      start = i;
      length = 1;
    }
    length++;
  }
  return out + value.slice(start) + '\r\n';
}

function alarm(words, minutesBefore, related) {
  return (
    'BEGIN:VALARM\r\nACTION:DISPLAY\r\nTRIGGER;RELATED=' +
    related +
    ':' +
    (minutesBefore ? '-' + span(minutesBefore) : 'PT0M') +
    '\r\n' +
    folded('DESCRIPTION', escaped(words)) +
    'END:VALARM\r\n'
  );
}

function span(minutes) {
  return 'PT' + minutes + 'M';
}

function event(plan, e) {
  return (
    'BEGIN:VEVENT\r\n' +
    folded('UID', e.id + '@' + plan.id + '.benchlore') +
    'DTSTAMP:' +
    compact(plan.stamp) +
    'Z\r\n' +
    folded('SUMMARY', escaped(e.title)) +
    'DTSTART:' +
    compact(e.from) +
    '\r\n' +
    (e.to > e.from ? 'DTEND:' + compact(e.to) + '\r\n' : '') +
    (e.words === undefined ? '' : folded('DESCRIPTION', escaped(e.words))) +
    'TRANSP:' +
    (e.free ? 'TRANSPARENT' : 'OPAQUE') +
    '\r\n' +
    e.alarms.join('') +
    'END:VEVENT\r\n'
  );
}

function note(n) {
  return n.pattern.replace(/\{(\d+)\}/g, (all, i) => {
    const q = n.quantities[Number(i)];
    return q ? units.text(q.value, q.value, q.unit) : all;
  });
}

function words(step) {
  return plain(
    step.cautions
      .map(c => '! ' + note(c.what) + ' ' + note(c.measure))
      .concat(step.notes.map(note))
      .join('\n')
  );
}

function stepEvents(step) {
  return steps.joined(step.slots).map((slot, i) => {
    const clamps = step.task === 'CLAMPS_OFF';
    return {
      id: step.id + (i === 0 ? '' : '-' + (i + 1)),
      title: step.title,
      from: slot.start,
      to: slot.end,
      words: words(step),
      free: step.kind === 'WAIT',
      alarms: step.kind === 'WORK' ? [alarm(clamps ? 'Clamps off' : step.title, clamps ? 0 : 30, 'START')] : []
    };
  });
}

function windows(coats) {
  return coats
    .slice(0, -1)
    .map(coat => {
      const opens = steps.stage(coat.drying, 'RECOAT_OPENS');
      const closes = steps.stage(coat.drying, 'RECOAT_CLOSES');
      const over = 'Recoat over coat ' + coat.number;
      if (!opens) {
        return null;
      }
      return {
        id: 'recoat-' + coat.number,
        title: over + ' opens',
        from: opens,
        to: closes || opens,
        free: true,
        words: closes ? 'After it closes, scuff the whole coat before the next.' : undefined,
        alarms: [alarm(over + ': the window opens', 0, 'START')].concat(
          closes ? [alarm(over + ': the window closes in 2 hours', 120, 'END')] : []
        )
      };
    })
    .filter(Boolean);
}

function reEntries(plan) {
  const entry = plan.air && plan.air.reEntries[0];
  if (!entry || entry.second === null || entry.second === undefined) {
    return [];
  }
  return plan.coats.coats.map(coat => {
    const safe = steps.plus(steps.plus(coat.drying.start, Math.ceil(entry.second)).slice(0, 17) + '00', 60);
    return {
      id: 're-enter-' + coat.number,
      title: 'Stay out of the room, fan on',
      from: coat.drying.start,
      to: safe,
      free: true,
      words: 'Vapour of coat ' + coat.number + '. No flame, no sparks. The safety data sheet wins.',
      alarms: [alarm('The room is fit to sit in again', 0, 'END')]
    };
  });
}

// The text of an .ics file for a plan the engine has given.
export function calendar(id, title, plan) {
  const all = [].concat.apply([], plan.steps.map(stepEvents)).concat(windows(plan.coats.coats), reEntries(plan));
  const head = { id: id, stamp: plan.steps[0].slots[0].start };
  return (
    'BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//benchlore//plan//EN\r\n' +
    folded('NAME', escaped(title)) +
    all.map(e => event(head, e)).join('') +
    'END:VCALENDAR\r\n'
  );
}
