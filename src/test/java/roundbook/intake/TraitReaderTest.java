package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.Log;
import roundbook.job.Log.Keep;

/** What a row says of its log besides its measures. */
class TraitReaderTest {
  private static Tally tally(String heading, String cell) {
    return Tally.one("Log|Length (ft)|Mid (in)|" + heading, "A1|18|13|" + cell);
  }

  @ParameterizedTest
  @CsvSource({
    "sill, SILL",
    "Sills, SILL",
    "PLATE, PLATE",
    "top plate, PLATE",
    "header, HEADER",
    "lintel, HEADER",
    "spare, SPARE",
    "any, ANY",
    "'', ANY",
  })
  void keepsALogForAPlace(String cell, Keep keep) {
    Tally tally = tally("Keep for", cell);
    assertEquals(keep, tally.log().traits().keep());
    assertTrue(!tally.said().contains("D2"), tally.said());
  }

  @Test
  void anUnknownUseIsDoubtedAndTheLogMayGoAnywhere() {
    Tally tally = tally("Keep for", "bench");
    assertEquals(Keep.ANY, tally.log().traits().keep());
    assertTrue(tally.said().contains("D2"), tally.said());
  }

  /** A log that is to be left out is read and marked; a word that says neither is asked about. */
  @ParameterizedTest
  @CsvSource({
    "x, true",
    "yes, true",
    "1, true",
    "no, false",
    "'', false",
    "-, false",
    "rotten, true",
  })
  void skipsALog(String cell, boolean skip) {
    assertEquals(skip, tally("Skip", cell).log().traits().skip());
  }

  @Test
  void asksWhetherALogIsLeftOut() {
    Tally tally = tally("Skip", "perhaps");
    assertEquals("", tally.tags());
    assertEquals("Type x or no. Log A1 left out.", tally.remedy("bad-number.skip"));
    assertEquals("D2", tally.problem("bad-number.skip").where().address());
  }

  @Test
  void saysWhySkippedLogsAreLeftOut() {
    assertEquals(
        "log-unfit.skipped(text=\"rotten\")",
        tally("Skip", "rotten").problem("log-unfit.skipped").said().toString());
  }

  @ParameterizedTest
  @CsvSource({
    "rotten heart, rotten",
    "sold?, sold",
    "verkauft, verkauft",
    "not sold,",
    "sweep to the north,",
  })
  void wordsThatSpoilAUsedLogAreSaid(String remark, String word) {
    Tally tally = tally("Remarks", remark);
    assertEquals(1, tally.logs().size());
    assertEquals(word != null, tally.said().contains("log-unfit.used"), tally.said());
  }

  /** A word in any column that is not read counts as well; that of a skipped log does not. */
  @Test
  void wordsInOtherColumnsAreSaidToo() {
    assertEquals("A2", tally("Whim", "broken").problem("log-unfit.used").where().address());
    Tally skipped = Tally.one("Log|Length (ft)|Mid (in)|Skip|Remarks", "A1|18|13|x|broken");
    assertTrue(!skipped.said().contains("log-unfit.used"), skipped.said());
  }

  @ParameterizedTest
  @CsvSource({"1/2, 0.5", "=2, 2", "0, 0", "'', 0", "S2, 0", "2-b, 0"})
  void sweepIsAMeasureOrAClass(String cell, String inches) {
    Tally tally = tally("Sweep", cell);
    assertEquals(inches, Tally.inches(tally.log().traits().sweep()));
  }

  @ParameterizedTest
  @CsvSource({
    "N, 3, N, 3", "n, '', N, ''", "'', 12, '', 12", "'', '', '', ''", "N, 2.0, N, 2",
    "N, first, N, ''", "N, 0, N, ''", "N, -1, N, ''", "N, 1000, N, ''", "N, 1.5, N, ''",
  })
  void wishesForAPlace(String wall, String round, String wanted, String number) {
    Tally tally =
        Tally.one("Log|Length (ft)|Mid (in)|Wall|Round", "A1|18|13|" + wall + "|" + round);
    Log.Wish wish = tally.log().place();
    assertEquals(wanted, wish.wall());
    assertEquals(number, wish.round().isPresent() ? wish.round().getAsInt() + "" : "");
    boolean doubted = !round.isEmpty() && number.isEmpty();
    assertEquals(doubted, tally.said().contains("E2"), tally.said());
  }

  /**
   * The middle of a butt log lies under the mean of its ends, for its butt flares; that of an upper
   * log is the mean, for it does not: 12 + 18 ft / 2 x 0.13, and (16 + 12) / 2.
   */
  @ParameterizedTest
  @CsvSource({
    "butt, 13.17",
    "'', 13.17",
    "yes, 13.17",
    "1, 13.17",
    "upper, 14",
    "top, 14",
    "middle, 14",
    "no, 14",
    "2, 14",
    "U, 14",
  })
  void anUpperLogHasItsMiddleAtTheMeanOfItsEnds(String cell, String mid) {
    Tally tally = Tally.one("Log|Length (ft)|Butt (in)|Tip (in)|Butt log", "A1|18|16|12|" + cell);
    assertEquals(mid, Tally.inches(tally.log().mid()));
  }

  /** 12 at 9 ft from the butt of a log of 20 ft: 12 - (12 - 10) / 11 at the middle. */
  @ParameterizedTest
  @CsvSource({
    "9, 11.82, false",
    "10, 12, false",
    "'', 12, false",
    "0, 12, true",
    "20, 12, true",
    "25, 12, true",
    "-1, 12, true",
  })
  void theMiddleMayBeMeasuredElsewhere(String at, String mid, boolean said) {
    Tally tally =
        Tally.one(
            "Log|Length (ft)|Butt (in)|Mid (in)|Tip (in)|Mid at (ft)", "A1|20|14|12|10|" + at);
    assertEquals(mid, Tally.inches(tally.log().mid()), tally.said());
    assertEquals(said, tally.said().contains("F2 out-of-range.mid-at"), tally.said());
  }

  @Test
  void otherColumnsAreCarriedThroughAndRemarksJoined() {
    Tally tally =
        Tally.one(
            "Log|Length (ft)|Mid (in)|Species|Volume|Photo|Remarks",
            "A1|18|13|spruce|7||straight|");
    Log log = tally.log();
    assertEquals(Map.of("Volume", "7"), log.extra());
    assertEquals("spruce", log.traits().species());
    assertEquals("straight", log.traits().remarks());
    assertEquals("pine", tally("Volume", "7").set("Species", "pine").log().traits().species());
  }

  /** A harvester's stations: its own butt, middle and top go before those near them. */
  @Test
  void aProfileGoesThroughTheMeasuredDiameters() {
    String stations = "0mm=372mm 1000mm=350mm 2000mm=330mm 3000mm=315mm 4000mm=300mm";
    Log log =
        Tally.one(
                "Log|Length (mm)|Butt (mm)|Mid (mm)|Tip (mm)|Profile",
                "A1|4000|371|331|299|" + stations)
            .log();
    assertEquals("371 331 299", mm(log, 0) + " " + mm(log, 2000) + " " + mm(log, 4000));
    assertEquals("350 315", mm(log, 1000) + " " + mm(log, 3000));
  }

  @ParameterizedTest
  @CsvSource({"0mm=372mm 4000mm=300mm, false", "0mm=372mm 100mm=370mm 9000mm=1mm, false"})
  void tooFewStationsAreNoProfile(String stations, boolean read) {
    Log log =
        Tally.one(
                "Log|Length (mm)|Butt (mm)|Mid (mm)|Tip (mm)|Profile",
                "A1|4000|360|340|300|" + stations)
            .log();
    assertEquals(read, log.profile().stations().size() != 3);
    assertEquals("360 340 300", mm(log, 0) + " " + mm(log, 2000) + " " + mm(log, 4000));
  }

  private static long mm(Log log, long at) {
    return log.profile().at(roundbook.units.Length.ofMillimetres(at)).nanometres() / 1_000_000;
  }
}
