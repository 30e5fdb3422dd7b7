package benchlore.schedules.answer;

import benchlore.schedules.quantity.AsciiText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A request's input as a reader calls it: {@code part.thicknessMetre} is "thickness of the part".
 * What the parts of its name don't tell by themselves stands in a table.
 */
final class InputWords {
  private static final List<String> UNITS =
      List.of(
          "metre",
          "metres",
          "micron",
          "second",
          "newton",
          "kilogram",
          "ratio",
          "percent",
          "square",
          "cubic",
          "per",
          "degrees",
          "celsius");

  private static final Map<String, String> OWN =
      Map.ofEntries(
          Map.entry("celsius", "temperature"),
          Map.entry("airCelsius", "air temperature"),
          Map.entry("surfaceCelsius", "surface temperature"),
          Map.entry("lowDegrees", "smallest ring angle"),
          Map.entry("highDegrees", "largest ring angle"),
          Map.entry("count", "number"),
          Map.entry("people", "number of people"),
          Map.entry("coats", "number of coats"),
          Map.entry("pieces", "number of pieces"),
          Map.entry("flutes", "number of edges"),
          Map.entry("boards", "number of boards"),
          Map.entry("moisturePercent", "moisture of the wood"),
          Map.entry("moisturePercents", "moisture of the wood"),
          Map.entry("densityKilogramPerCubicMetre", "density of the wood"),
          Map.entry("hardnessNewton", "hardness of the wood"),
          Map.entry("sinceMachinedSecond", "time since the faces were cut"),
          Map.entry("machiningSecond", "machining time"),
          Map.entry("backingMetre", "wood between clamp and joint"),
          Map.entry("headMetre", "width of a clamp's jaw"),
          Map.entry("caulDepthMetre", "depth of the cauls"),
          Map.entry("forceNewton", "force of a clamp"),
          Map.entry("perJointSecond", "time for each joint"),
          Map.entry("perSquareMetreSecond", "time to spread a square metre"),
          Map.entry("perClampSecond", "time to set a clamp"),
          Map.entry("faceSquareMetre", "area of the faces"),
          Map.entry("edgeSquareMetre", "area of the edges"),
          Map.entry("endGrainSquareMetre", "area of the end grain"),
          Map.entry("totalSquareMetre", "whole area"),
          Map.entry("removeMetre", "depth to take off"),
          Map.entry("removedKilogram", "wood sanded off"),
          Map.entry("levelMicron", "roughness to level"),
          Map.entry("micron", "roughness"),
          Map.entry("jumpLimitRatio", "largest step between grades"),
          Map.entry("slipMetre", "room to slide"),
          Map.entry("distancesMetre", "distance of a screw"),
          Map.entry("acrossMetre", "width across the cut"),
          Map.entry("noseToWorkMetre", "distance from the spindle's nose to the work"),
          Map.entry("airborneShare", "share of the dust that stays in the air"),
          Map.entry("volume", "volume"));

  private static final Map<String, String> GROUPS =
      Map.of(
          "dry", "the dry season",
          "damp", "the damp season",
          "rings", "the board",
          "sprayed", "what is sprayed",
          "seasons", "the place",
          "trim", "the last cut");

  private InputWords() {}

  /** The words, small letters, to stand after "the" or with a capital at the head of a sentence. */
  static String of(String input) {
    String[] parts = split(input);
    String last = parts[parts.length - 1];
    String words = OWN.getOrDefault(last, plain(last));
    if (parts.length == 1 || words.contains(" of ")) {
      return words;
    }
    String group = parts[parts.length - 2];
    return words + " of " + GROUPS.getOrDefault(group, "the " + plain(group));
  }

  /** The words at the head of a sentence. */
  static String heading(String input) {
    return "The " + of(input);
  }

  private static String[] split(String input) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    for (int i = 0; i <= input.length(); i++) {
      if (i == input.length() || input.charAt(i) == '.') {
        String part = input.substring(from, i);
        int list = part.indexOf('[');
        parts.add(list < 0 ? part : part.substring(0, list));
        from = i + 1;
      }
    }
    return parts.toArray(new String[0]);
  }

  /** A name's words less the units at its end. */
  private static String plain(String name) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    for (int i = 0; i < name.length(); i++) {
      char letter = name.charAt(i);
      if ((AsciiText.isUpper(letter) || letter == '-') && word.length() > 0) {
        words.add(word.toString());
        word = new StringBuilder();
      }
      if (letter != '-') {
        word.append(AsciiText.lower(letter));
      }
    }
    words.add(word.toString());
    while (words.size() > 1 && UNITS.contains(words.get(words.size() - 1))) {
      words.remove(words.size() - 1);
    }
    return String.join(" ", words);
  }
}
