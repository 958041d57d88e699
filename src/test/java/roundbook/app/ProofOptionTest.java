package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.TypeConversionException;

/** The time of {@code --prove} may be left out, and a file's name after it is no time. */
class ProofOptionTest {
  private static String timed(String args) {
    return String.join(" ", ProofOption.timed(args.split(" ")));
  }

  @Test
  void theTimeMayBeLeftOut() {
    assertEquals("plan --prove=60s job.xlsx", timed("plan --prove job.xlsx"));
    assertEquals("plan job.xlsx --prove=60s", timed("plan job.xlsx --prove"));
    assertEquals("plan --prove=5min job.xlsx", timed("plan --prove 5min job.xlsx"));
    assertEquals("plan --prove=90s -q", timed("plan --prove=90s -q"));
    assertArrayEquals(new String[] {"plan"}, ProofOption.timed(new String[] {"plan"}));
  }

  @Test
  void aSlipInTheTimeIsNotTakenForAFile() {
    for (String slip : new String[] {"soon", "-3", "0", "5", "1h", "20S", "1.5min"}) {
      assertEquals("plan --prove=" + slip + " a.csv", timed("plan --prove " + slip + " a.csv"));
    }
    for (String other : new String[] {"-o", "--walls", "a.csv", "yard/jobs", "samples"}) {
      assertEquals("plan --prove=60s " + other, timed("plan --prove " + other));
    }
  }

  @Test
  void secondsAndMinutesAreRead() {
    ProofOption.TimeOf times = new ProofOption.TimeOf();
    assertEquals(Duration.ofSeconds(90), times.convert("90s"));
    assertEquals(Duration.ofMinutes(5), times.convert("5min"));
    for (String wrong : new String[] {"5", "0s", "5h", "-1min", ""}) {
      assertThrows(TypeConversionException.class, () -> times.convert(wrong));
    }
  }
}
