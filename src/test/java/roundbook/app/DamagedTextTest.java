package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.job.Log;
import roundbook.problem.Read;
import roundbook.table.Table;
import roundbook.units.Length;

/** Text tallies with bytes changed, lost and put in: read or refused, never a fault. */
class DamagedTextTest {
  private static final long SEED = 20260107;
  private static final int COPIES = 40;
  private static final byte[] TELLING = "\"'\n\r,;\t|=.-/0 9\u00bd\0".getBytes();

  @TempDir private Path folder;

  static List<TallyFixture> texts() {
    return TallyFixture.all().stream()
        .filter(fixture -> !fixture.orders().contains("book"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("texts")
  void isReadOrRefused(TallyFixture fixture) throws IOException {
    String name = fixture.files().get(0);
    fixture.read(name, folder);
    byte[] sound = Files.readAllBytes(folder.resolve(name));
    SplittableRandom random = new SplittableRandom(SEED + fixture.name().hashCode());
    for (int copy = 0; copy < COPIES; copy++) {
      Path damaged = Files.write(folder.resolve("damaged-" + name), damaged(sound, random));
      read(damaged);
    }
  }

  /** Logs that come out are whole: no problem of a damaged cell is passed over in silence. */
  private static void read(Path file) {
    Read<List<Table>> tables = Sources.read(file);
    AtomicInteger unsound = new AtomicInteger();
    tables
        .value()
        .ifPresent(
            found ->
                JobReader.check(
                    found, Asked.NOTHING, rules -> log -> unsound.addAndGet(isSound(log) ? 0 : 1)));
    assertEquals(0, unsound.get(), "seed " + SEED);
  }

  private static boolean isSound(Log log) {
    return log.length().isMoreThan(Length.ZERO)
        && log.butt().isMoreThan(Length.ZERO)
        && log.mid().isMoreThan(Length.ZERO)
        && !log.tag().isEmpty();
  }

  private static byte[] damaged(byte[] sound, SplittableRandom random) {
    StringBuilder bytes = new StringBuilder();
    int every = 1 + random.nextInt(30);
    for (byte each : sound) {
      int chance = random.nextInt(every * 8);
      if (chance == 0) {
        continue;
      }
      boolean changed = chance == 1;
      bytes.append((char) ((changed ? random.nextInt(256) : each) & 0xFF));
      if (chance == 2) {
        bytes.append((char) (TELLING[random.nextInt(TELLING.length)] & 0xFF));
      }
    }
    return bytes.toString().getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
  }
}
