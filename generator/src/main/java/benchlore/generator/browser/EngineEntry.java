package benchlore.generator.browser;

import benchlore.schedules.exchange.EngineJson;
import benchlore.schedules.present.FieldMeasure;
import benchlore.schedules.present.FigureText;
import benchlore.schedules.present.NamedUnit;
import benchlore.schedules.present.UnitSystem;
import benchlore.schedules.projectfile.PlanFileJson;
import benchlore.schedules.quantity.Unit;
import org.teavm.jso.JSExport;
import org.teavm.jso.JSObject;

/**
 * The engine as a page's script sees it: each function takes a plain object and returns one, as
 * {@link EngineJson} describes them. The page's modules call it through {@code planner/engine.js}.
 */
public final class EngineEntry {
  private static final String VERSION = "0.2.0";

  private EngineEntry() {}

  private static JSObject answer(JSObject request, EngineJson.Call call) {
    PageSink sink = new PageSink();
    call.answer(new PageNode(request), sink);
    return sink.whole();
  }

  /** The version of the engine, such as {@code 0.2.0}. */
  @JSExport
  public static String engineVersion() {
    return VERSION;
  }

  /** See {@link EngineJson#sanding}. */
  @JSExport
  public static JSObject sanding(JSObject request) {
    return answer(request, EngineJson::sanding);
  }

  /** See {@link EngineJson#machineOrSand}. */
  @JSExport
  public static JSObject machineOrSand(JSObject request) {
    return answer(request, EngineJson::machineOrSand);
  }

  /** See {@link EngineJson#shelfGap}. */
  @JSExport
  public static JSObject shelfGap(JSObject request) {
    return answer(request, EngineJson::shelfGap);
  }

  /** See {@link EngineJson#dust}. */
  @JSExport
  public static JSObject dust(JSObject request) {
    return answer(request, EngineJson::dust);
  }

  /** See {@link EngineJson#mist}. */
  @JSExport
  public static JSObject mist(JSObject request) {
    return answer(request, EngineJson::mist);
  }

  /** See {@link EngineJson#dew}. */
  @JSExport
  public static JSObject dew(JSObject request) {
    return answer(request, EngineJson::dew);
  }

  /** See {@link EngineJson#coats}. */
  @JSExport
  public static JSObject coats(JSObject request) {
    return answer(request, EngineJson::coats);
  }

  /** See {@link EngineJson#grade}. */
  @JSExport
  public static JSObject grade(JSObject request) {
    return answer(request, EngineJson::grade);
  }

  /** See {@link EngineJson#drying}. */
  @JSExport
  public static JSObject drying(JSObject request) {
    return answer(request, EngineJson::drying);
  }

  /** See {@link EngineJson#sheen}. */
  @JSExport
  public static JSObject sheen(JSObject request) {
    return answer(request, EngineJson::sheen);
  }

  /** See {@link EngineJson#glueUp}. */
  @JSExport
  public static JSObject glueUp(JSObject request) {
    return answer(request, EngineJson::glueUp);
  }

  /** See {@link EngineJson#air}. */
  @JSExport
  public static JSObject air(JSObject request) {
    return answer(request, EngineJson::air);
  }

  /** See {@link EngineJson#fit}. */
  @JSExport
  public static JSObject fit(JSObject request) {
    return answer(request, EngineJson::fit);
  }

  /** See {@link EngineJson#cutting}. */
  @JSExport
  public static JSObject cutting(JSObject request) {
    return answer(request, EngineJson::cutting);
  }

  /** See {@link EngineJson#reach}. */
  @JSExport
  public static JSObject reach(JSObject request) {
    return answer(request, EngineJson::reach);
  }

  /** See {@link EngineJson#tabs}. */
  @JSExport
  public static JSObject tabs(JSObject request) {
    return answer(request, EngineJson::tabs);
  }

  /** See {@link EngineJson#surfacing}. */
  @JSExport
  public static JSObject surfacing(JSObject request) {
    return answer(request, EngineJson::surfacing);
  }

  /** See {@link EngineJson#climate}. */
  @JSExport
  public static JSObject climate(JSObject request) {
    return answer(request, EngineJson::climate);
  }

  /** See {@link EngineJson#room}. */
  @JSExport
  public static JSObject room(JSObject request) {
    return answer(request, EngineJson::room);
  }

  /** See {@link EngineJson#plan}. */
  @JSExport
  public static JSObject plan(JSObject request) {
    return answer(request, EngineJson::plan);
  }

  /** See {@link EngineJson#sentence}. */
  @JSExport
  public static JSObject sentence(JSObject request) {
    return answer(request, EngineJson::sentence);
  }

  /** See {@link EngineJson#days}. */
  @JSExport
  public static JSObject days(JSObject request) {
    return answer(request, EngineJson::days);
  }

  /** See {@link EngineJson#calendar}. */
  @JSExport
  public static JSObject calendar(JSObject request) {
    return answer(request, EngineJson::calendar);
  }

  /** See {@link PlanFileJson#forms}. */
  @JSExport
  public static JSObject planForms(JSObject file) {
    return answer(file, PlanFileJson::forms);
  }

  /** See {@link PlanFileJson#read}. */
  @JSExport
  public static JSObject planFile(JSObject request) {
    return answer(request, PlanFileJson::read);
  }

  /**
   * A figure or range in the reader's units: {@code 3/4 in}, {@code 4–8 h}.
   *
   * @param low lower end
   * @param high upper end, the same for a single figure
   * @param unit a word of {@link Unit}
   * @param system a word of {@link UnitSystem}
   */
  @JSExport
  public static String figure(double low, double high, String unit, String system) {
    return FigureText.text(low, high, Unit.valueOf(unit), UnitSystem.valueOf(system));
  }

  /** A number without a unit: three figures, more for whole numbers. */
  @JSExport
  public static String number(double value) {
    return FigureText.number(value);
  }

  /**
   * What a machine is set to: {@code 1200–1500 mm/min}.
   *
   * @param low lower end, in the engine's unit
   * @param high upper end, in the engine's unit
   * @param field the unit as {@link NamedUnit} shows it
   * @param system a word of {@link UnitSystem}
   */
  @JSExport
  public static String setting(double low, double high, String field, String system) {
    return FigureText.setting(low, high, FieldMeasure.field(field), UnitSystem.valueOf(system));
  }

  /**
   * What was typed into a field, in the field's unit; not a number if it is no measure of its kind.
   *
   * @param field the field's unit as {@link NamedUnit} shows it
   * @param system a word of {@link UnitSystem}
   */
  @JSExport
  public static double typed(String text, String field, String system) {
    return FieldMeasure.parse(text, FieldMeasure.field(field), UnitSystem.valueOf(system))
        .orElse(Double.NaN);
  }

  /** A field's value in the reader's unit, without the unit; see {@link #typed}. */
  @JSExport
  public static String shown(double value, String field, String system) {
    return FieldMeasure.text(value, FieldMeasure.field(field), UnitSystem.valueOf(system));
  }

  /** The reader's unit of a field; see {@link #typed}. */
  @JSExport
  public static String unitOf(String field, String system) {
    return FieldMeasure.unit(FieldMeasure.field(field), UnitSystem.valueOf(system)).symbol();
  }

  /** A field's value in the engine's unit; see {@link #typed}. */
  @JSExport
  public static double inEngineUnit(double value, String field) {
    return FieldMeasure.field(field).toEngine(value);
  }
}
