// A plan file as the request the engine takes.

import { data, rings } from '../planner/records.js';
import * as view from '../planner/view.js';
import * as amounts from './amounts.js';
import * as nightWords from './night-words.js';
import * as planFile from './plan-file.js';

function surface(s) {
  const kind = Object.keys(s)[0];
  const x = s[kind];
  switch (kind) {
    case 'ball-nose':
      return { surface: 'BallNose', ballDiameterMetre: amounts.si(x.diameter), stepoverMetre: amounts.si(x.stepover) };
    case 'straight-cut':
      return {
        surface: 'StraightCut',
        bitDiameterMetre: amounts.si(x.diameter),
        feedPerFluteMetre: amounts.si(x['chip-load'])
      };
    case 'planed':
      return { surface: 'Planed', knifePitchMetre: amounts.si(x.pitch), cutterRadiusMetre: amounts.si(x.radius) };
    case 'sanded':
      return { surface: 'SandedTo', grit: grit(x) };
    default:
      return { surface: 'Sawn', by: amounts.constant(x) };
  }
}

function grit(label) {
  return { system: 'FEPA_P', number: Number(label.slice(1)) };
}

function mean(climate) {
  return climate.hours.reduce((sum, h) => sum + h.celsius, 0) / climate.hours.length;
}

function minute(clock) {
  return Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));
}

function week(hours, off) {
  const days = planFile.DAYS.map(d =>
    (hours[d] || []).map(s => ({
      fromMinuteInclusive: minute(s.slice(0, s.indexOf('-'))),
      toMinuteExclusive: minute(s.slice(s.indexOf('-') + 1))
    }))
  );
  return { days: days, daysOff: off };
}

function climate(c) {
  const heating = c.heating && {
    fromHour: amounts.inUnit(c.heating.from, 'h'),
    toHour: amounts.inUnit(c.heating.to, 'h'),
    celsius: amounts.si(c.heating.at)
  };
  const nights = (c.nights || []).map(nightWords.asked);
  return data.climate(amounts.si(c.low), amounts.si(c.high), amounts.si(c.humidity), heating, nights);
}

function part(p) {
  return {
    name: p.name,
    count: p.count,
    lengthMetre: amounts.si(p.length),
    widthMetre: amounts.si(p.width),
    thicknessMetre: amounts.si(p.thickness),
    rings: rings(p.grain || 'flat'),
    boards: p.boards,
    surface: surface(p.surface),
    machiningSecond: amounts.si(p.machining),
    moves: p.moves
  };
}

function materials(file, finish) {
  return {
    wood: data.species(file.species).wood,
    adhesive: data.adhesive(file.adhesive).adhesive,
    finish: finish.finish,
    solvents: finish.shares
  };
}

function coats(told, finish) {
  return {
    coats: told.coats,
    wetFilmMicron: told['wet-film'] ? amounts.si(told['wet-film']) : view.usual(finish['wet-film']),
    method: amounts.constant(told.method),
    sheen: amounts.constant(told.sheen)
  };
}

function clamps(c) {
  return {
    count: c.count,
    forceNewton: amounts.si(c.force),
    caulDepthMetre: amounts.si(c.caul),
    headMetre: amounts.si(c.jaw)
  };
}

function shop(file) {
  const told = key => planFile.shop(file, key);
  const air = climate(told('climate'));
  return {
    week: week(told('hours'), told('days-off') || []),
    climate: air,
    room: data.room(amounts.si(told('volume')), told('air-changes'), told('mixing-factor'), mean(air)),
    ignition: told('ignition').map(amounts.constant),
    sanding: {
      shelf: told('grades').map(grit),
      tools: told('sanders').map(amounts.constant),
      jumpLimitRatio: data.shop.sanding.jumpLimitRatio
    },
    clamps: clamps(told('clamps')),
    people: told('people')
  };
}

export function request(file) {
  const finish = data.finish(file.finish.record);
  return {
    start: file.start.replace(' ', 'T'),
    parts: file.parts.map(part),
    materials: materials(file, finish),
    coats: coats(file.finish, finish.finish),
    shop: shop(file),
    place: data.place(file.place).seasons,
    settled: file.boards.settled,
    moisturePercent: amounts.si(file.boards.moisture)
  };
}
