package benchlore.schedules.quantity.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The guard itself: each rule finds its bad snippets, and lets the good ones beside them pass. */
class GuardTest {

  private static List<Rule> broken(String body) throws IOException {
    String source =
        """
        import java.util.*;
        class Snippet {
          double a = 1, b = 2, c = 3; int i, j; String s = "";
          double sum() { return a + b; }
          double deepSum() { return sum(); }
          double product() { return a * b; }
          double tidy() { double t = a + b; return t / 2; }
          @SuppressWarnings("unused")
          Object snippet(List<Double> numbers) { %s }
        }
        """
            .formatted(body);
    return List.copyOf(new TreeSet<>(Sources.in(source).stream().map(Finding::rule).toList()));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          SUM_RIGHT_OF_PLUS      | return a + (b + c);
          SUM_RIGHT_OF_PLUS      | return a + ((b - c));
          SUM_RIGHT_OF_PLUS      | return a + (double) (b + c);
          SUM_RIGHT_OF_PLUS      | return a + (i > 0 ? b + c : c);
          SUM_RIGHT_OF_PLUS      | double x = a; x += b + c; return x;
          SUM_RIGHT_OF_PLUS      | double t = b + c; return a + t;
          SUM_RIGHT_OF_PLUS      | double t; t = b - c; return a + t;
          SUM_RIGHT_OF_PLUS      | double t = b + c; double x = a; x += t; return x;
          SUM_RIGHT_OF_PLUS      | double t = b + c; t = a + t; return t / t;
          SUM_RIGHT_OF_PLUS      | return a + sum();
          SUM_RIGHT_OF_PLUS      | return a + deepSum();
          SUM_RIGHT_OF_PLUS      | return a * b + (c + a);
          PRODUCT_RIGHT_OF_TIMES | return a * (b * c);
          PRODUCT_RIGHT_OF_TIMES | return a * (b / c);
          PRODUCT_RIGHT_OF_TIMES | return a * (b % c);
          PRODUCT_RIGHT_OF_TIMES | double x = a; x *= b * c; return x;
          PRODUCT_RIGHT_OF_TIMES | double t = b / c; return a * t;
          PRODUCT_RIGHT_OF_TIMES | return a * product();
          PLATFORM_MATH          | return Math.exp(a);
          PLATFORM_MATH          | return Math.log(a) + Math.log10(a);
          PLATFORM_MATH          | return Math.pow(a, b);
          PLATFORM_MATH          | return Math.sin(a) + Math.cos(a) + Math.tan(a);
          PLATFORM_MATH          | return Math.round(a);
          PLATFORM_MATH          | return Math.rint(a);
          PLATFORM_MATH          | return StrictMath.cbrt(a);
          UNCHECKED_CAST         | return (int) a;
          UNCHECKED_CAST         | return (long) Math.floor(a);
          UNCHECKED_CAST         | return numbers.get(0).intValue();
          UNCHECKED_CAST         | int k = 0; k += a; return k;
          NUMBER_TEXT            | return "" + a;
          NUMBER_TEXT            | String t = "x"; t += a; return t;
          NUMBER_TEXT            | return new StringBuilder().append(a);
          NUMBER_TEXT            | return String.valueOf(a);
          NUMBER_TEXT            | return Double.toString(a);
          NUMBER_TEXT            | return s + numbers.get(0);
          NUMBER_TEXT            | throw new IllegalArgumentException("a must be above 0: " + a);
          FORMATTING             | return String.format("%d", i);
          FORMATTING             | return "%d".formatted(i);
          FORMATTING             | return s.replaceAll("a", "b");
          FORMATTING             | return s.split(",");
          FORMATTING             | return java.util.regex.Pattern.compile("a");
          FORMATTING             | return s.toUpperCase();
          FORMATTING             | return s.toLowerCase(Locale.getDefault());
          STREAM                 | return numbers.stream().mapToDouble(n -> 1.0);
          STREAM                 | return java.util.stream.DoubleStream.of(1, 3);
          JDK_TIME               | return java.time.LocalDateTime.parse(s);
          JDK_TIME               | return java.time.LocalDate.now();
          JDK_TIME               | return java.time.LocalDateTime.of(2027, 1, 1, 8, 0).plusSeconds(i);
          JDK_TIME               | return java.time.ZoneId.of(s);
          JDK_TIME               | return java.time.format.DateTimeFormatter.ofPattern(s);
          OUTSIDE_WORLD          | return System.nanoTime();
          OUTSIDE_WORLD          | return new Random();
          OUTSIDE_WORLD          | return new Thread();
          OUTSIDE_WORLD          | return s.getClass();
          OUTSIDE_WORLD          | return Snippet.class.getDeclaredFields();
          OUTSIDE_WORLD          | return Math.random();
          OUTSIDE_WORLD          | return new java.io.File(s);
          """)
  void findsWhatIsBad(Rule rule, String body) throws IOException {
    assertEquals(true, broken(body).contains(rule), () -> "not found in: " + body);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          return a + b + c;
          return (a + b) + c;
          return a - (b + c);
          return a / (b * c);
          return a * (b + c);
          return a + (b * c);
          return i + (j + i);
          return "a" + (i + j);
          return s + ("b" + s);
          double t = b + c; return a + t + t;
          double t = b + c; return t + a;
          double t = b * c; return a + t;
          return a + tidy();
          return a + product();
          return Math.sqrt(a) + Math.floor(b);
          return (int) 3L;
          return (double) i;
          throw new IllegalArgumentException("i must be above 0: " + i);
          return s.toLowerCase(Locale.ROOT);
          """)
  void letsPassWhatIsGood(String body) throws IOException {
    assertEquals(List.of(), broken(body));
  }
}
