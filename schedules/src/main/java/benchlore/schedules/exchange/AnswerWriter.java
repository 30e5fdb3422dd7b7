package benchlore.schedules.exchange;

import benchlore.schedules.time.Date;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes records into a {@link Sink}. */
final class AnswerWriter {
  private final Sink sink;

  AnswerWriter(Sink sink) {
    this.sink = sink;
  }

  /** How to write the fields of one value. */
  interface Part<T> {
    /** Writes them. */
    void write(AnswerWriter out, T value);
  }

  AnswerWriter number(String key, OptionalDouble value) {
    return value.isPresent() ? number(key, value.getAsDouble()) : nothing(key);
  }

  AnswerWriter number(String key, double value) {
    sink.number(key, value);
    return this;
  }

  /** In seconds. */
  AnswerWriter duration(String key, Duration value) {
    return number(key, value.seconds());
  }

  AnswerWriter duration(String key, Optional<Duration> value) {
    return value.isPresent() ? duration(key, value.get()) : nothing(key);
  }

  private AnswerWriter nothing(String key) {
    sink.nothing(key);
    return this;
  }

  AnswerWriter flag(String key, boolean value) {
    sink.flag(key, value);
    return this;
  }

  AnswerWriter text(String key, String value) {
    sink.text(key, value);
    return this;
  }

  AnswerWriter word(String key, Enum<?> value) {
    return text(key, value.name());
  }

  AnswerWriter word(String key, Optional<? extends Enum<?>> value) {
    return value.isPresent() ? word(key, value.get()) : nothing(key);
  }

  /** ISO 8601 local time to the second. */
  AnswerWriter moment(String key, Moment value) {
    return text(key, value.toString());
  }

  /** ISO 8601 day. */
  AnswerWriter day(String key, Date value) {
    return text(key, value.toString());
  }

  AnswerWriter moment(String key, Optional<Moment> value) {
    return value.isPresent() ? moment(key, value.get()) : nothing(key);
  }

  AnswerWriter texts(String key, List<String> values) {
    sink.open(key, true);
    for (String value : values) {
      text("", value);
    }
    sink.close();
    return this;
  }

  /** A list of objects. */
  <T> AnswerWriter list(String key, List<T> values, Part<T> part) {
    sink.open(key, true);
    for (T value : values) {
      group("", value, part);
    }
    sink.close();
    return this;
  }

  /** A list of lists of objects. */
  <T> AnswerWriter lists(String key, List<List<T>> values, Part<T> part) {
    sink.open(key, true);
    for (List<T> value : values) {
      list("", value, part);
    }
    sink.close();
    return this;
  }

  <T> AnswerWriter group(String key, T value, Part<T> part) {
    sink.open(key, false);
    part.write(this, value);
    sink.close();
    return this;
  }

  <T> AnswerWriter optional(String key, Optional<T> value, Part<T> part) {
    return value.isPresent() ? group(key, value.get(), part) : nothing(key);
  }
}
