package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.fail;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Refusal;
import java.util.ArrayList;
import java.util.List;

/** Opens answers in tests. */
final class Answers {
  private Answers() {}

  static <T> Answer.Given<T> given(Answer<T> answer) {
    return answer.fold(g -> g, r -> fail("refused: " + r.reasons()));
  }

  static <T> T value(Answer<T> answer) {
    return given(answer).value();
  }

  static <T> List<String> refused(Answer<T> answer) {
    List<String> inputs = new ArrayList<>();
    return answer.fold(
        g -> fail("answered: " + g.value()),
        r -> {
          for (Refusal reason : r.reasons()) {
            inputs.add(reason.input());
          }
          return inputs;
        });
  }

  static <T> List<String> codes(Answer<T> answer) {
    List<String> codes = new ArrayList<>();
    for (Caution caution : given(answer).cautions()) {
      codes.add(caution.code());
    }
    return codes;
  }

  static <T> Caution caution(Answer<T> answer, String code) {
    for (Caution caution : given(answer).cautions()) {
      if (caution.code().equals(code)) {
        return caution;
      }
    }
    return fail("no caution " + code + " in " + codes(answer));
  }
}
