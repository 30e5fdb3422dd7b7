package benchlore.generator.json;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes records into a {@link Sink}. */
final class Out {
  private final Sink sink;

  Out(Sink sink) {
    this.sink = sink;
  }

  /** How to write the fields of one value. */
  interface Part<T> {
    /** Writes them. */
    void write(Out out, T value);
  }

  Out number(String key, OptionalDouble value) {
    return value.isPresent() ? number(key, value.getAsDouble()) : nothing(key);
  }

  Out number(String key, double value) {
    sink.number(key, value);
    return this;
  }

  /** In seconds. */
  Out duration(String key, Duration value) {
    return number(key, (double) value.getSeconds());
  }

  Out duration(String key, Optional<Duration> value) {
    return value.isPresent() ? duration(key, value.get()) : nothing(key);
  }

  private Out nothing(String key) {
    sink.nothing(key);
    return this;
  }

  Out flag(String key, boolean value) {
    sink.flag(key, value);
    return this;
  }

  Out text(String key, String value) {
    sink.text(key, value);
    return this;
  }

  Out word(String key, Enum<?> value) {
    return text(key, value.name());
  }

  Out word(String key, Optional<? extends Enum<?>> value) {
    return value.isPresent() ? word(key, value.get()) : nothing(key);
  }

  /** ISO 8601 local time to the second. */
  Out moment(String key, LocalDateTime value) {
    StringBuilder text = date(value.toLocalDate());
    two(text, 'T', value.getHour());
    two(text, ':', value.getMinute());
    two(text, ':', value.getSecond());
    return text(key, text.toString());
  }

  /** ISO 8601 day. */
  Out day(String key, LocalDate value) {
    return text(key, date(value).toString());
  }

  private static StringBuilder date(LocalDate day) {
    StringBuilder text = new StringBuilder();
    text.append(day.getYear());
    two(text, '-', day.getMonthValue());
    two(text, '-', day.getDayOfMonth());
    return text;
  }

  Out moment(String key, Optional<LocalDateTime> value) {
    return value.isPresent() ? moment(key, value.get()) : nothing(key);
  }

  private static void two(StringBuilder text, char before, int value) {
    text.append(before).append(value < 10 ? "0" : "").append(value);
  }

  Out texts(String key, List<String> values) {
    sink.open(key, true);
    for (String value : values) {
      text("", value);
    }
    sink.close();
    return this;
  }

  /** A list of objects. */
  <T> Out list(String key, List<T> values, Part<T> part) {
    sink.open(key, true);
    for (T value : values) {
      group("", value, part);
    }
    sink.close();
    return this;
  }

  <T> Out group(String key, T value, Part<T> part) {
    sink.open(key, false);
    part.write(this, value);
    sink.close();
    return this;
  }

  <T> Out optional(String key, Optional<T> value, Part<T> part) {
    return value.isPresent() ? group(key, value.get(), part) : nothing(key);
  }
}
