// What a coat is asked about beside its sheen: is the work fit to coat now, how the coat dries, coats to a film.

import * as engine from './engine.js';
import * as figureText from './figure-text.js';
import { data } from './records.js';
import * as view from './view.js';

function fit(v) {
  return engine.dew({ airCelsius: v.air, humidityPercent: v.damp, surfaceCelsius: v.surface });
}

function margin(answer) {
  const value = answer.value;
  return view.glance([
    view.figure('Dew point', view.q(value.dewPointCelsius, 'celsius')),
    view.figure(
      'Surface above it',
      view.q(value.marginCelsius, 'celsius-difference'),
      view.line(answer, 'SURFACE_ABOVE_DEW_POINT')
    ),
    view.figure('Least surface', view.q(value.leastSurfaceCelsius, 'celsius'))
  ]);
}

function dries(v) {
  return engine.drying({
    finish: data.finish(v.finish).finish,
    wetFilmMicron: v.wet,
    climate: data.climate(v.low, v.high, v.humidity),
    start: v.today
  });
}

function planned(answer, stage) {
  return answer.value.stages.find(s => s.stage === stage);
}

function stages(answer) {
  const names = [
    ['TOUCH_DRY', 'Touch dry'],
    ['RECOAT_OPENS', 'Next coat'],
    ['SAND', 'Sands'],
    ['FULL_CURE', 'Cured']
  ];
  return view.glance(
    names
      .filter(n => planned(answer, n[0]))
      .map(n => view.figure(n[1], ['after ', view.q(planned(answer, n[0]).planned, 'second')]))
  );
}

function film(v) {
  return engine.coats({
    finish: data.finish(v.finish).finish,
    wetFilmMicron: v.wet,
    targetDryFilmMicron: v.target
  });
}

function dryFilm(answer) {
  return view.glance([view.figure('Coats', String(answer.value.value), view.line(answer, 'COATS_NEEDED'))]);
}

// The folded sections under the ways to a sheen.
export function beside(v) {
  return [
    view.fold('Fit to coat now?', fit(v), value => (value.sound ? 'Yes.' : 'No: too near the dew point.'), margin),
    view.fold(
      'One more coat, begun when you work again:',
      dries(v),
      value => {
        const touch = value.stages.find(s => s.stage === 'TOUCH_DRY');
        return touch ? 'touch dry after ' + figureText.text(touch.planned, touch.planned, 'second') + '.' : 'as below.';
      },
      stages
    ),
    view.fold(
      'Coats to that film:',
      film(v),
      value => value.value + (value.value === 1 ? ' coat.' : ' coats.'),
      dryFilm
    )
  ];
}
