package roundbook.intake.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;

/** A crane's place is a wall that there is and a distance from it. */
class CranePlaceTest {
  @ParameterizedTest
  @CsvSource({
    "N, 20 ft, ''",
    "n, 20 ft, ''",
    "'', '', ''",
    "Q, 20 ft, bad-setting.crane-wall",
    "N, '', bad-setting.crane-half",
    "'', 20 ft, bad-setting.crane-half",
  })
  void isWholeOrSaid(String wall, String off, String said) {
    Map<String, String> settings = new HashMap<>();
    if (!wall.isEmpty()) {
      settings.put("Crane_wall", wall);
    }
    if (!off.isEmpty()) {
      settings.put("Crane_off", off);
    }
    Asked asked =
        new Asked(
            settings,
            Optional.of(HouseTold.ofWalls("24x18")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    List<String> keys =
        JobReader.read(List.of(), asked).problems().stream()
            .filter(each -> each.code() == ProblemCode.BAD_SETTING)
            .map(Problem::said)
            .map(phrase -> phrase.key())
            .toList();
    assertEquals(said.isEmpty() ? List.of() : List.of(said), keys);
  }
}
