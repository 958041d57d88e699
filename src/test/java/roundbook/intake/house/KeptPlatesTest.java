package roundbook.intake.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.Building;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.plan.Jobs;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.words.Sentences;
import roundbook.units.Length;

/** Logs kept for plates, on a house of 20 by 16 ft whose walls N and S are laid first. */
class KeptPlatesTest {
  private static final Building HOUSE =
      Jobs.building(Length.ofInches(240), Length.ofInches(192), Length.ofInches(6));

  @ParameterizedTest
  @CsvSource({
    "PLATE, 200, '', false",
    "PLATE, 200, E, false",
    "PLATE, 260, N, true",
    "PLATE, 180, '', true",
    "SILL, 180, '', false",
    "ANY, 260, N, false"
  })
  void platesBelongOnTheWallsLaidLast(Log.Keep keep, long inches, String wall, boolean said) {
    KeptPlates plates = new KeptPlates(Optional.of(HOUSE));
    plates.see(log("A1", keep, inches, wall));
    assertEquals(said, plates.problem().isPresent());
  }

  @Test
  void allAreSaidInOneLineThatNamesTheWalls() {
    KeptPlates plates = new KeptPlates(Optional.of(HOUSE));
    for (String tag : List.of("A1", "A2", "A3")) {
      plates.see(log(tag, Log.Keep.PLATE, 260, tag.equals("A2") ? "W" : "S"));
    }
    Problem problem = plates.problem().orElseThrow();
    assertEquals(ProblemCode.PLATE_ELSEWHERE, problem.code());
    String said = Sentences.english().message(problem);
    assertTrue(said.contains("A1, A3") && said.contains("E, W"), said);
    assertFalse(said.contains("A2"), said);
  }

  private static Log log(String tag, Log.Keep keep, long inches, String wall) {
    Log log = Kept.log(Jobs.log(tag, Length.ofInches(inches), "14", "12", "11"), keep);
    return new Log(
        log.tag(),
        log.length(),
        log.profile(),
        log.sources(),
        log.traits(),
        new Log.Wish(wall, java.util.OptionalInt.empty()),
        log.origin(),
        log.extra());
  }
}
